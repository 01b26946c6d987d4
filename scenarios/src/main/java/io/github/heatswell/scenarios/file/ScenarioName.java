package io.github.heatswell.scenarios.file;

import java.nio.file.Path;
import java.text.Normalizer;
import java.util.Locale;
import java.util.Set;

/**
 * The short name of a scenario, which also names the folder of its results. Whatever a file is called, the name is a
 * single, ordinary folder name, so that results cannot end up elsewhere.
 */
public final class ScenarioName {

    private static final int MAX_LENGTH = 60;
    private static final String NAMELESS = "scenario";

    /** Names that Windows keeps for devices, with any extension. */
    private static final Set<String> DEVICES = Set.of(
            "con", "prn", "aux", "nul", "com1", "com2", "com3", "com4", "com5", "com6", "com7", "com8", "com9", "lpt1",
            "lpt2", "lpt3", "lpt4", "lpt5", "lpt6", "lpt7", "lpt8", "lpt9");

    private ScenarioName() {}

    /**
     * The name of the scenario in a file.
     *
     * @param file the file
     * @return its name without the extension, made safe
     */
    public static String of(Path file) {
        Path last = file.getFileName();
        return safe(last == null ? "" : last.toString().replaceFirst("(?i)\\.ya?ml$", ""));
    }

    /**
     * A name made safe.
     *
     * @param name any text
     * @return letters, digits, points, hyphens and underscores of it, others replaced by hyphens; up to 60 characters,
     *     at least one, not beginning or ending with a point or hyphen
     */
    public static String safe(String name) {
        String plain = Normalizer.normalize(name, Normalizer.Form.NFC)
                .codePoints()
                .limit(MAX_LENGTH)
                .map(c -> Character.isLetterOrDigit(c) || c == '.' || c == '_' ? c : '-')
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString()
                .replaceAll("\\.{2,}", "-")
                .replaceAll("-{2,}", "-")
                .replaceAll("^[-.]+|[-.]+$", "");
        String stem = plain.replaceFirst("\\..*", "").toLowerCase(Locale.ROOT);
        return plain.isEmpty() ? NAMELESS : DEVICES.contains(stem) ? NAMELESS + "-" + plain : plain;
    }
}
