package io.github.heatswell.scenarios.file;

import io.github.heatswell.plant.Material;
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

    /** The materials of pipes. */
    static Map<String, Material> materials() {
        Map<String, Material> words = new LinkedHashMap<>();
        for (Material material :
                List.of(Material.STEEL, Material.STAINLESS_STEEL, Material.COPPER, Material.PEX, Material.PE)) {
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
