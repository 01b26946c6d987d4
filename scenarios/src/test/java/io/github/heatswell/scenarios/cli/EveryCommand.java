package io.github.heatswell.scenarios.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Every command that writes, and what a folder holds before and after. */
public final class EveryCommand {

    /** For the interview; other commands ask nothing. */
    public static final String ANSWERS = """
            dk
            Mill cottage, as answered
            check valve
            4 bar
            dk
            10 degC
            200 L
            steel
            10 bar
            gas
            9 kW
            60 degC
            7 bar
            none
            none
            no
            none
            heating
            none
            none
            """;

    private static final List<String> LIKELY_NAMES = List.of(
            "trace.csv",
            "comparison.csv",
            "sizing.csv",
            "map.csv",
            "spread.csv",
            "diagnosis.json",
            "outlook.csv",
            "index.html",
            "report.html");

    private EveryCommand() {}

    /**
     * The command lines by short names.
     *
     * @param out the folder each is to write into
     * @param readings a file with readings on site; see {@link #readings}
     */
    public static Map<String, List<String>> lines(Path out, Path readings) {
        Map<String, String> lines = new LinkedHashMap<>();
        lines.put("run", "run orchard-lodge");
        lines.put("run long", "run mill-cottage --sample 1s");
        lines.put("compare", "compare orchard-lodge orchard-lodge-vessel");
        lines.put("compare varied", "compare orchard-lodge --vary supply.pressure=3bar,4bar");
        lines.put("size", "size orchard-lodge");
        lines.put("map", "map orchard-lodge-vessel");
        lines.put("spread", "spread orchard-lodge -n 16");
        lines.put("diagnose", "diagnose orchard-lodge-vessel --readings " + readings);
        lines.put("outlook", "outlook orchard-lodge-vessel --years 1");
        lines.put("lessons", "lessons");
        lines.put("interview", "interview --results " + out);
        Map<String, List<String>> all = new LinkedHashMap<>();
        lines.forEach((name, line) -> all.put(
                name,
                List.of((line + " --out " + (name.equals("interview") ? out.resolve("my-house.yaml") : out))
                        .split(" "))));
        return all;
    }

    /** Writes readings on site. */
    public static Path readings(Path folder) throws IOException {
        return Files.writeString(folder.resolve("spots.yaml"), "cold-static: 4.2 bar\nheat-up-maximum: 6.9 bar\n");
    }

    /** Executes a command line; what the interview asks is answered. */
    public static Outcome execute(List<String> line) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int status = CommandFactory.heatswell(new PrintWriter(out), new PrintWriter(err), new StringReader(ANSWERS))
                .execute(line.toArray(String[]::new));
        return new Outcome(status, out.toString(), err.toString());
    }

    /** Writes what an earlier run may have left. */
    public static void earlier(Path folder) throws IOException {
        Files.createDirectories(folder);
        for (String name : LIKELY_NAMES) {
            Files.writeString(folder.resolve(name), "mine " + name);
        }
    }

    /** All below a folder: names, and contents of files. */
    public static Map<String, String> contents(Path folder) throws IOException {
        Map<String, String> contents = new TreeMap<>();
        try (Stream<Path> below = Files.walk(folder)) {
            for (Path path : below.toList()) {
                contents.put(
                        folder.relativize(path).toString(),
                        Files.isRegularFile(path)
                                ? new String(Files.readAllBytes(path), java.nio.charset.StandardCharsets.ISO_8859_1)
                                : "");
            }
        }
        return contents;
    }
}
