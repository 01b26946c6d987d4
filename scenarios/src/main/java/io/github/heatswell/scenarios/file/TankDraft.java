package io.github.heatswell.scenarios.file;

import io.github.heatswell.system.Material;
import io.github.heatswell.system.Shell;
import io.github.heatswell.system.Tank;
import io.github.heatswell.units.ConductanceUnit;
import io.github.heatswell.units.LengthUnit;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.VolumeUnit;
import java.util.Optional;

/** A tank while being read: files give the dimensions of its shell beside the rest. */
final class TankDraft {

    private final Tank.Builder tank = Tank.builder();
    private final Shell.CylinderBuilder cylinder = Shell.cylinder();
    private boolean rigid;

    void volume(double value, VolumeUnit unit) {
        tank.volume(value, unit);
    }

    /** Sets the material; none means a rigid shell. */
    void material(Optional<Material> material) {
        rigid = material.isEmpty();
        material.ifPresent(cylinder::material);
    }

    void diameter(double value, LengthUnit unit) {
        cylinder.diameter(value, unit);
    }

    void wall(double value, LengthUnit unit) {
        cylinder.wall(value, unit);
    }

    void standingLoss(double value, ConductanceUnit unit) {
        tank.standingLoss(value, unit);
    }

    void workingPressure(Pressure value) {
        tank.workingPressure(value);
    }

    void layers(int number) {
        tank.layers(number);
    }

    void height(double value, LengthUnit unit) {
        tank.height(value, unit);
    }

    Tank end() {
        return tank.shell(rigid ? Shell.rigid() : cylinder.build()).build();
    }
}
