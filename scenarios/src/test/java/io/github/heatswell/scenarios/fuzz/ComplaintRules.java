package io.github.heatswell.scenarios.fuzz;

import io.github.heatswell.scenarios.fault.Fault;
import io.github.heatswell.scenarios.wording.Printable;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** What every complaint about a file must be: placed in its text, one line that shows, in words of this project. */
final class ComplaintRules {

    private static final int LONGEST = 1_500;
    private static final Pattern FOREIGN = Pattern.compile(
            "java\\.(?:lang|util)\\.[A-Z]|[a-z]Exception|out of bounds"
                    + "|For input string|io\\.github|snakeyaml|[A-Za-z]@[0-9a-f]{6,8}\\b"
                    + "|while (?:scanning|parsing)|simple key|block mapping|flow (?:mapping|sequence)|<block|<document|<scalar|any token");
    /** The ends of lines, and the last bytes of those that only YAML knows. */
    private static final String ENDS = "\n\r\u0085\u00a8\u00a9";

    private ComplaintRules() {}

    /** What is wrong with the complaints. */
    static List<String> broken(List<Fault> faults, Path file) throws IOException {
        List<String> broken = new ArrayList<>();
        if (faults.isEmpty()) {
            broken.add("is refused without a reason");
        }
        long lines = 2
                + Files.readString(file, StandardCharsets.ISO_8859_1)
                        .chars()
                        .filter(c -> ENDS.indexOf(c) >= 0)
                        .count();
        for (Fault fault : faults) {
            if (fault.at().line() < 1 || fault.at().line() > lines || fault.at().column() < 1) {
                broken.add("has no place in the text: " + fault);
            }
            String message = fault.message();
            if (message.isBlank() || message.length() > LONGEST || !Printable.shows(message)) {
                broken.add("is no line of text: " + message.length() + " characters, " + Printable.quote(message));
            }
            if (FOREIGN.matcher(message).find()) {
                broken.add("speaks of the program's inside: " + fault);
            }
        }
        return broken;
    }
}
