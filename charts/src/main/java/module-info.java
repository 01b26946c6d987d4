/**
 * Pictures and tables of what Heatswell has computed.
 *
 * <p>{@link io.github.heatswell.charts} draws and says what a run found, {@link io.github.heatswell.charts.table} writes it as
 * CSV. How a picture is put together and drawn is not exported and may change.
 */
// Core, Batik and JFreeChart are automatic modules, core because Hipparchus has no module name. All three state their
// own names in their manifests, so these do not depend on how a file is called.
@SuppressWarnings({"requires-automatic", "requires-transitive-automatic"})
module io.github.heatswell.charts {
    requires transitive io.github.heatswell.core;
    requires transitive java.desktop;
    requires java.xml;
    requires org.apache.commons.csv;
    requires org.apache.xmlgraphics.batik.svggen;
    requires org.jfree.jfreechart;

    exports io.github.heatswell.charts;
    exports io.github.heatswell.charts.table;
}
