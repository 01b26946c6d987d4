package io.github.heatswell.scenarios.lesson;

import java.util.List;

/**
 * The course: why relief valves weep in closed systems.
 */
public final class Lessons {

    private Lessons() {}

    /**
     * All lessons of the course.
     *
     * @return the lessons, in the order in which they are best read
     */
    public static List<Lesson> all() {
        return List.of(
                ClosingLessons.open(),
                ClosingLessons.closing(),
                SteepeningLesson.steepening(),
                ReliefLessons.everyHeatUp(),
                DripLesson.dropByDrop(),
                VesselLessons.cushion(),
                VesselLessons.precharge(),
                VesselSizeLesson.size(),
                SupplyLessons.highSupply(),
                SupplyLessons.reducingValve(),
                HouseLessons.walls(),
                HouseLessons.partialDraws(),
                LostChargeLesson.lostCharge(),
                ReliefLessons.runaway());
    }
}
