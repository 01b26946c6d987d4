package io.github.heatswell.scenarios.file;

import io.github.heatswell.system.Material;
import io.github.heatswell.system.Supply;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The words that stand for the choices of a description. */
final class Words {

    private Words() {}

    /** The constants of an enum, as files write them: {@code check-valve}. */
    static <E extends Enum<E>> Map<String, E> of(E[] constants) {
        Map<String, E> words = new LinkedHashMap<>();
        for (E constant : constants) {
            words.put(constant.name().toLowerCase(Locale.ROOT).replace('_', '-'), constant);
        }
        return words;
    }

    /** The ways to connect to the mains; a backflow preventer keeps water in as a check valve does. */
    static Map<String, Supply.Arrangement> arrangements() {
        Map<String, Supply.Arrangement> words = of(Supply.Arrangement.values());
        words.put("backflow-preventer", Supply.Arrangement.CHECK_VALVE);
        return words;
    }

    /** Yes or no. */
    static Map<String, Boolean> yesOrNo() {
        return pair("yes", "no");
    }

    /** What a thermostat does when the water is hot enough: nothing, or what it should. */
    static Map<String, Boolean> stuckOrWorking() {
        return pair("stuck", "working");
    }

    /** Whether a house stands in the southern half of the globe. */
    static Map<String, Boolean> hemispheres() {
        Map<String, Boolean> words = new LinkedHashMap<>();
        words.put("north", false);
        words.put("south", true);
        return words;
    }

    private static Map<String, Boolean> pair(String yes, String no) {
        Map<String, Boolean> words = new LinkedHashMap<>();
        words.put(yes, true);
        words.put(no, false);
        return words;
    }

    /** Tolerances of a study of convergence. */
    static Map<String, Double> tolerances() {
        Map<String, Double> words = new LinkedHashMap<>();
        for (int digits = 4; digits <= 12; digits++) {
            words.put("1e-" + digits, Double.valueOf("1e-" + digits));
        }
        return words;
    }

    /** The materials of pipes. */
    static Map<String, Material> materials() {
        Map<String, Material> words = new LinkedHashMap<>();
        for (Material material : List.of(
                Material.STEEL,
                Material.STAINLESS_STEEL,
                Material.COPPER,
                Material.PEX,
                Material.PE,
                Material.PPR,
                Material.PB,
                Material.PVCC)) {
            words.put(material.name(), material);
        }
        return words;
    }

    /** The materials of tanks: those of pipes, and none at all for a rigid shell. */
    static Map<String, Optional<Material>> shellMaterials() {
        Map<String, Optional<Material>> words = new LinkedHashMap<>();
        materials().forEach((name, material) -> words.put(name, Optional.of(material)));
        words.put("rigid", Optional.empty());
        return words;
    }
}
