package io.github.heatswell.published;

import static io.github.heatswell.published.Band.open;
import static io.github.heatswell.published.BandVerdict.BELOW;
import static io.github.heatswell.published.BandVerdict.PARTLY;
import static io.github.heatswell.published.House.fahrenheit;
import static io.github.heatswell.published.Prediction.Method.FORMULA;
import static io.github.heatswell.published.Prediction.Method.TABLE;
import static io.github.heatswell.units.PressureUnit.PSI;

import io.github.heatswell.ageing.PrechargeLoss;
import io.github.heatswell.system.Material;
import io.github.heatswell.system.Shell;
import io.github.heatswell.units.LengthUnit;
import io.github.heatswell.water.GibbsPolynomialWater;
import io.github.heatswell.water.If97Region1;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleFunction;

/** Water at pressures no tank survives, densities, stiffness and growth of materials, loss of precharge. */
final class WaterAndMaterials {

    private static final GibbsPolynomialWater WATER = GibbsPolynomialWater.instance();
    private static final If97Region1 BEYOND = If97Region1.instance();
    private static final double ATMOSPHERE = 101_325;

    private WaterAndMaterials() {}

    static List<Prediction> all() {
        return List.of(
                Prediction.of("BL-02", FORMULA, "nothing", WaterAndMaterials::strainFactor),
                Prediction.of("BL-02-b", FORMULA, "nothing", WaterAndMaterials::strainFactor)
                        .but(BELOW, "It leaves out that a closed cylinder also stretches along its axis."),
                Prediction.of(
                        "BL-03",
                        FORMULA,
                        "whether the line also stretches along its axis",
                        () -> Band.over(at -> added(at[0]), open(0.85, 0.95))),
                Prediction.ofSeveral(
                        "BL-04",
                        TABLE,
                        "nothing",
                        () -> at(
                                f -> Band.of(density(fahrenheit(60)) / density(fahrenheit(f))),
                                40,
                                50,
                                60,
                                70,
                                80,
                                90,
                                100)),
                Prediction.ofSeveral(
                        "WP-03", TABLE, "nothing", () -> at(t -> Band.of(density(t)), 4, 10, 15, 20, 25, 30)),
                Prediction.of("MT-02", TABLE, "nothing", () -> Band.of(Material.STEEL.linearExpansion() / 1.8 * 1e6)),
                Prediction.ofSeveral(
                                "MT-03",
                                TABLE,
                                "nothing",
                                () -> List.of(growth(Material.PEX), growth(Material.COPPER), growth(Material.STEEL)))
                        .but(
                                PARTLY,
                                "Copper and steel agree. For PE-X the table has 0.18 where the model has 0.14; plastics"
                                        + " scatter by more than that."),
                Prediction.ofSeveral(
                                "MT-01",
                                TABLE,
                                "nothing",
                                () -> at(hours -> Band.of(Material.PE.modulus(296.15, hours * 3600) / 1e6), 0.5, 12))
                        .remark("The creep of PE was taken from this very table; the modulus of a short test was not."),
                Prediction.ofSeveral(
                        "MT-04", TABLE, "kind of polyethylene", () -> List.of(Band.of(modulus(Material.PE)))),
                Prediction.of(
                        "GS-01",
                        FORMULA,
                        "rate of loss, a third to three times the usual one",
                        () -> Band.of(12 - left(PrechargeLoss.LOW), 12 - left(PrechargeLoss.HIGH))));
    }

    private static List<Band> at(DoubleFunction<Band> band, double... places) {
        return Arrays.stream(places).mapToObj(band).toList();
    }

    private static double density(double celsius) {
        return WATER.density(celsius + 273.15, ATMOSPHERE);
    }

    private static Band growth(Material material) {
        return Band.of(material.linearExpansion() * 1000);
    }

    private static double modulus(Material material) {
        return material.youngsModulus() / 1e6;
    }

    /** The factor c of a closed thin cylinder, dV/V = c p D/(E e). */
    private static Band strainFactor() {
        Material steel = Material.STEEL;
        return Band.of(Shell.cylinder(steel, 500, 5, LengthUnit.MILLIMETRE).compliance() * steel.youngsModulus() / 100);
    }

    /** Gallons to pump into 111 888 gal of line at 50 degF, from 0 to 2430 psig; diameter over wall 38.5, E 30e6 psi. */
    private static double added(double factor) {
        double pressure = PSI.toSi(2430);
        double temperature = fahrenheit(50) + 273.15;
        double denser = BEYOND.density(temperature, pressure + ATMOSPHERE) / BEYOND.density(temperature, ATMOSPHERE);
        double wider = 1 + factor * pressure * 38.5 / PSI.toSi(30e6);
        return 111_888 * (denser * wider - 1);
    }

    private static double left(double yearly) {
        return PSI.fromSi(new PrechargeLoss(yearly).left(PSI.toSi(12), PSI.toSi(12), 1));
    }
}
