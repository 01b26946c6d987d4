package io.github.heatswell.simulation;

import io.github.heatswell.simulation.TankColumn.Linear;
import io.github.heatswell.water.LiquidWater;

/**
 * The water of the hot pipes, on its way from the top of the tank to the tap. Each {@link HotPipe} is fully mixed, so a draw of one pipe
 * volume replaces 63 % of its water, where a front without mixing would replace all. With mass {@code m = rho V}, the growth a of the wall
 * with temperature and c with pressure (relative), the flow j from the tank's side and k onwards (kg/s), a pipe obeys the equations of a
 * zone of the {@link TankColumn}:
 *
 * <pre>
 *   m (a - beta) dT/dt + m (c + kappa) dp/dt = j - k
 *   m cp dT/dt = -L (T - T_room) + V T beta dp/dt + max(j, 0) (h_before - h) + max(-k, 0) (h_behind - h)
 * </pre>
 *
 * A pump takes the flow r from the tank through the first pipe, a circulation loop, and back: it adds {@code r (h_top - h)} to the loop and
 * {@code r (h - h_return)} to the layer it returns to, and it flows up through the layers above that one. A loop that
 * gives back more than r takes nothing from the tank: what is beyond r comes back into the top.
 *
 * <p>So the water of a pipe shrinks as it cools and draws some from the tank. The heat of the wall is left out: that of copper pipe would slow the
 * cooling by a sixth.
 *
 * <p>Working memory of one run, not thread-safe.
 */
final class HotPipes {

    /** Flows this close (-) count as equal. */
    private static final double SAME_FLOW = 1e-12;
    /** Mixing time (s) of a step at once, taken as one of a second: a pipe's water is then replaced once at most. */
    private static final double STEP_MIXING_TIME = 2;

    private final Content[] contents;
    private final double room;
    private final double coldTemperature;
    private final double coldPressure;
    private double drawn;
    private double circulating;
    /** The time (s) within which no pipe's water is replaced by mixing. */
    private double mixingTime;

    /** The water of one pipe. */
    private static final class Content {
        final HotPipe pipe;
        final LiquidWater.State state = new LiquidWater.State();
        final Linear flow = new Linear();
        final Linear warming = new Linear();
        double temperature;
        double volume;
        double mass;
        double loss;
        /** Heat (W) that leaves it unmixed, beside its own enthalpy. */
        double passing;
        /** Heat (W) that water on its way back to the tank carries out of it unmixed, likewise. */
        double passingBack;
        /** The flow onwards (kg/s) as last found, by which the water that passes is judged. */
        double onwards;
        /** Whether water comes from the tank's side. */
        boolean filled;

        double rate;

        Content(HotPipe pipe) {
            this.pipe = pipe;
        }

        double enthalpy() {
            return state.enthalpy();
        }
    }

    /**
     * The pipes of a house.
     *
     * @param plant the house
     */
    HotPipes(CompiledSystem plant) {
        contents = new Content[plant.hotPipes.length];
        for (int i = 0; i < contents.length; i++) {
            contents[i] = new Content(plant.hotPipes[i]);
        }
        room = plant.roomTemperature;
        coldTemperature = plant.coldTemperature;
        coldPressure = plant.coldPressure;
    }

    boolean isEmpty() {
        return contents.length == 0;
    }

    /** Evaluates the water for a pressure (Pa, absolute) and a state. */
    void prepare(LiquidWater water, double p, double[] y) {
        drawn = 0;
        circulating = 0;
        mixingTime = TankColumn.MIXING_TIME;
        for (Content content : contents) {
            HotPipe pipe = content.pipe;
            double t = y[pipe.temperature];
            content.temperature = t;
            water.evaluate(t, p, content.state);
            content.volume =
                    pipe.volume + pipe.byTemperature * (t - coldTemperature) + pipe.byPressure * (p - coldPressure);
            content.mass = content.state.density() * content.volume;
            content.loss = pipe.heatLoss * (t - room);
        }
        if (contents.length > 0 && contents[0].pipe.pumped() > 0) {
            Content loop = contents[0];
            circulating = Math.min(loop.state.density() * loop.pipe.pumped(), loop.mass / TankColumn.MIXING_TIME);
        }
    }

    /** For a step that takes no time: no tap or pump runs, nothing is lost, and what would replace a pipe's water more than once passes by. */
    void still() {
        drawn = 0;
        circulating = 0;
        mixingTime = STEP_MIXING_TIME;
        for (Content content : contents) {
            content.loss = 0;
            content.onwards = 0;
        }
    }

    /** Sets the flow (kg/s) to the tap. */
    void draw(double flow) {
        drawn = flow;
    }

    /** The flow (kg/s) that a pump keeps up through the first pipe and back into the tank. */
    double circulating() {
        return circulating;
    }

    /** The flow (kg/s) to the tap. */
    double drawn() {
        return drawn;
    }

    /**
     * One pass from the tap to the tank with the assumed directions.
     *
     * @param entering enthalpy (J/kg) of the water that comes from the tank
     * @param beside heat (W) that the drawn water carries out of the tank beside that, whatever else the pipes take or give back
     * @return the flow from the tank (kg/s)
     */
    Linear pass(double entering, double beside) {
        letPass(entering, beside);
        for (int i = contents.length - 1; i >= 0; i--) {
            Content here = contents[i];
            double h = here.enthalpy();
            double before = i == 0 ? entering : contents[i - 1].enthalpy();
            double difference = before - h;
            Linear heating = here.warming;
            heating.set(
                    (i == 0 ? beside : contents[i - 1].passing) - here.passing - here.loss - here.passingBack,
                    here.volume * here.temperature * here.state.expansivity(),
                    0);
            Linear onwards = here.flow;
            if (i + 1 < contents.length) {
                Linear next = contents[i + 1].flow;
                onwards.set(next.constant, next.byPressure, 0);
                heating.constant += contents[i + 1].passingBack;
                if (!contents[i + 1].filled) {
                    heating.add(h - contents[i + 1].enthalpy(), next);
                }
            } else {
                onwards.set(drawn, 0, 0);
            }
            double capacity = here.mass * here.state.heatCapacity();
            double growth = here.pipe.byTemperature * here.state.density() - here.state.expansivity() * here.mass;
            double give = here.pipe.byPressure * here.state.density() + here.state.compressibility() * here.mass;
            double expansion = growth / capacity;
            if (here.filled) {
                heating.constant += i == 0 ? circulating * difference : 0;
                here.flow.setSum(onwards, expansion, heating, give, 1 / (1 - expansion * difference));
                heating.add(difference, here.flow);
            } else {
                here.flow.setSum(onwards, expansion, heating, give, 1);
            }
            heating.scale(1 / capacity);
        }
        return contents[0].flow;
    }

    /**
     * Works out what passes each pipe by, as in the layers of the {@link TankColumn}: of the drawn flow, less what larger pipes behind it
     * give to the tap themselves, and of what they take or give back beyond that.
     */
    private void letPass(double entering, double beside) {
        double before = entering;
        double met = beside;
        for (Content here : contents) {
            double mixing = here.mass / mixingTime;
            double h = here.enthalpy();
            double beyond = here == last() ? 0 : here.onwards - drawn;
            double through = drawn + Math.signum(beyond) * Math.max(0, Math.abs(beyond) - mixing);
            met = here.filled && through > mixing ? (1 - mixing / through) * (met + through * (before - h)) : 0;
            here.passing = met;
            before = h;
        }
        double back = 0;
        for (int i = contents.length - 2; i >= 0; i--) {
            Content here = contents[i];
            double mixing = here.mass / mixingTime;
            double through = -here.onwards - mixing;
            double difference = contents[i + 1].enthalpy() - here.enthalpy();
            back = !here.filled && through > mixing ? (1 - mixing / through) * (back + through * difference) : 0;
            here.passingBack = back;
        }
    }

    /** Sets the assumed directions to those of the flows; returns whether any changed. */
    boolean turnFlows(double pressureRate) {
        boolean turned = false;
        for (Content content : contents) {
            boolean filled = content.flow.at(pressureRate, 0) + (content == contents[0] ? circulating : 0) > 0;
            turned |= filled != content.filled;
            content.filled = filled;
        }
        return flowsOnwards(pressureRate) || turned;
    }

    /** Takes the flows between the pipes as those that hold; returns whether one so large that some passes by has changed. */
    private boolean flowsOnwards(double pressureRate) {
        boolean changed = false;
        for (int i = 0; i + 1 < contents.length; i++) {
            Content here = contents[i];
            double before = here.onwards;
            here.onwards = contents[i + 1].flow.at(pressureRate, 0);
            double mixing = here.mass / mixingTime;
            boolean passes = Math.abs(here.onwards - drawn) > mixing || Math.abs(before - drawn) > mixing;
            changed |= passes && Math.abs(here.onwards - before) > SAME_FLOW * Math.abs(before);
        }
        return changed;
    }

    /** Heat (W) that comes back into the tank beside the enthalpy of the water next to it. */
    double passingBack() {
        return contents.length > 0 ? contents[0].passingBack : 0;
    }

    /** Whether water comes back into the top of the tank. */
    boolean returns() {
        return contents.length > 0 && !contents[0].filled;
    }

    /** The flow from the tank (kg/s) as last found. */
    Linear flow() {
        return contents[0].flow;
    }

    /** Enthalpy (J/kg) of the water next to the tank. */
    double nearEnthalpy() {
        return contents[0].enthalpy();
    }

    private Content last() {
        return contents[contents.length - 1];
    }

    /** Temperature (K) at the tap. */
    double tapTemperature() {
        return last().temperature;
    }

    /** Density (kg/m3) at the tap. */
    double tapDensity() {
        return last().state.density();
    }

    /** Heat (W), with enthalpies counted from that given (J/kg), that leaves through the tap. */
    double tapHeat(double reference) {
        return drawn * (last().enthalpy() - reference) + last().passing;
    }

    /** Takes the rates of the temperatures (K/s) for a rate of pressure (Pa/s) as those that hold, and writes them. */
    void fill(double pressureRate, double[] into) {
        for (Content content : contents) {
            content.rate = content.warming.at(pressureRate, 0);
        }
        copyRates(into);
    }

    /** Writes the rates that hold. */
    void copyRates(double[] into) {
        for (Content content : contents) {
            into[content.pipe.temperature] = content.rate;
        }
    }

    /** The largest part (-) of its water that a step at once (Pa) replaces in a pipe. */
    double renewed(double step) {
        double most = 0;
        for (Content content : contents) {
            most = Math.max(most, Math.abs(content.flow.at(step, 0)) / content.mass);
        }
        return most;
    }

    /** Growth rate (m3/s) of the room in the pipes, with the rates that hold. */
    double roomRate(double pressureRate) {
        double sum = 0;
        for (Content content : contents) {
            sum += content.pipe.byTemperature * content.rate + content.pipe.byPressure * pressureRate;
        }
        return sum;
    }

    /** Heat loss (W). */
    double lost() {
        double sum = 0;
        for (Content content : contents) {
            sum += content.loss;
        }
        return sum;
    }

    /** Mass (kg) of the water. */
    double mass() {
        double sum = 0;
        for (Content content : contents) {
            sum += content.mass;
        }
        return sum;
    }

    /** Energy (J) of the water, with enthalpies counted from that given (J/kg). */
    double energy(double reference) {
        double sum = 0;
        for (Content content : contents) {
            sum += content.mass * (content.state.internalEnergy() - reference);
        }
        return sum;
    }
}
