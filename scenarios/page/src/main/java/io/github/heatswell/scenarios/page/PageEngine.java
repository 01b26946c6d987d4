package io.github.heatswell.scenarios.page;

import io.github.heatswell.scenarios.file.InvalidScenarioException;
import io.github.heatswell.scenarios.file.ScenarioReader;
import java.util.List;
import org.teavm.jso.JSExport;
import org.teavm.jso.JSObject;

/** What the page may call. */
public final class PageEngine {

    private PageEngine() {}

    /**
     * Does nothing: the compiler to script wants a beginning; the page calls {@link #open} instead.
     *
     * @param arguments none
     */
    public static void main(String[] arguments) {}

    /**
     * Reads a house.
     *
     * @param name what it is called where its file is meant
     * @param text the text of its scenario file
     * @return an object with the {@code house}, or with the {@code faults} of the text: line, column and message of each
     */
    @JSExport
    public static JSObject open(String name, String text) {
        try {
            return new Values()
                    .with("house", new ReadHouse(ScenarioReader.read(name, text)))
                    .object();
        } catch (InvalidScenarioException e) {
            return faults(e);
        }
    }

    static JSObject faults(InvalidScenarioException e) {
        return new Values()
                .each(
                        "faults",
                        List.copyOf(e.faults()),
                        fault -> new Values()
                                .with("line", fault.at().line())
                                .with("column", fault.at().column())
                                .with("message", fault.message()))
                .object();
    }
}
