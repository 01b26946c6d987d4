package io.github.heatswell.result;

import java.util.List;
import java.util.Objects;

/**
 * Everything that crossed the system's boundary in a run, and the draws that were not served in full. Volumes are those
 * of cold water (supply temperature, air pressure).
 *
 * @param relief discharge of each relief valve, in the order of the description
 * @param letIn volume taken in from the supply (m3)
 * @param returned the volume that went back to the mains (m3)
 * @param drawn the volume of hot water drawn (m3)
 * @param leaked the volume lost by leaks (m3)
 * @param heatDelivered the heat delivered to the taps, above cold water (J)
 * @param heaterInput energy input of burner or elements (J)
 * @param heatToWater the part of it that reached the water (J)
 * @param heatLost heat lost to the room by the tank and by hot pipes (J)
 * @param drawsCutShort number of draws with a given heat that the next draw cut short; 0 or more
 */
public record Totals(
        List<Relief> relief,
        double letIn,
        double returned,
        double drawn,
        double leaked,
        double heatDelivered,
        double heaterInput,
        double heatToWater,
        double heatLost,
        int drawsCutShort) {

    /**
     * Copies the list.
     *
     * @param relief discharge of each relief valve, in the order of the description
     * @param letIn volume taken in from the supply (m3)
     * @param returned the volume that went back to the mains (m3)
     * @param drawn the volume of hot water drawn (m3)
     * @param leaked the volume lost by leaks (m3)
     * @param heatDelivered the heat delivered to the taps, above cold water (J)
     * @param heaterInput energy input of burner or elements (J)
     * @param heatToWater the part of it that reached the water (J)
     * @param heatLost heat lost to the room by the tank and by hot pipes (J)
     * @param drawsCutShort number of draws with a given heat that the next draw cut short; 0 or more
     */
    public Totals {
        relief = List.copyOf(Objects.requireNonNull(relief, "relief"));
    }

    /**
     * Total discharge of all relief valves.
     *
     * @return the volume (m3), as cold water
     */
    public double relieved() {
        return relief.stream().mapToDouble(Relief::volume).sum();
    }

    /**
     * How often all relief valves left their seats together.
     *
     * @return the number of openings, 0 or more
     */
    public int openings() {
        return relief.stream().mapToInt(Relief::openings).sum();
    }

    /**
     * Discharge of one relief valve in a run.
     *
     * @param name the valve
     * @param mass the water discharged (kg)
     * @param volume the same as cold water at air pressure (m3): what a bucket under the pipe would collect
     * @param openings how often the valve left its seat, 0 or more: as many as {@link RunSummary#openings}. Hot water fully
     *     opening a valve already lifted by pressure, and a valve open from the start, are not counted
     */
    public record Relief(String name, double mass, double volume, int openings) {

        /**
         * Checks that the name is there.
         *
         * @param name the valve
         * @param mass the water discharged (kg)
         * @param volume the same as cold water at air pressure (m3): what a bucket under the pipe would collect
         * @param openings how often the valve left its seat, 0 or more: as many as {@link RunSummary#openings}. Hot water
         *     fully opening a valve already lifted by pressure, and a valve open from the start, are not counted
         */
        public Relief {
            Objects.requireNonNull(name, "name");
        }
    }
}
