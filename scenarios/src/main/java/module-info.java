/**
 * Houses in files, the houses that come with Heatswell, and the files and pages that are made of a run.
 *
 * <p>Begin at {@link io.github.heatswell.scenarios.file.ScenarioReader ScenarioReader} and
 * {@link io.github.heatswell.scenarios.catalogue.Catalogue Catalogue}. The command line, the interview, the reader of YAML and
 * the writer of pages are not exported and may change.
 */
// Core is an automatic module, because Hipparchus has no module name. It states its own name in its manifest.
@SuppressWarnings({"requires-automatic", "requires-transitive-automatic"})
module io.github.heatswell.scenarios {
    requires com.fasterxml.jackson.core;
    requires info.picocli;
    requires transitive io.github.heatswell.charts;
    requires transitive io.github.heatswell.core;
    requires java.xml;
    requires org.snakeyaml.engine;

    exports io.github.heatswell.scenarios.catalogue;
    exports io.github.heatswell.scenarios.choice;
    exports io.github.heatswell.scenarios.fault;
    exports io.github.heatswell.scenarios.file;
    exports io.github.heatswell.scenarios.outlook;
    exports io.github.heatswell.scenarios.report;
    exports io.github.heatswell.scenarios.readings;
    exports io.github.heatswell.scenarios.spread;
    exports io.github.heatswell.scenarios.teaching;
    exports io.github.heatswell.scenarios.variation;
}
