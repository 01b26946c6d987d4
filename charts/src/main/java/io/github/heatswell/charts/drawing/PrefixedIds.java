package io.github.heatswell.charts.drawing;

import org.apache.batik.svggen.SVGIDGenerator;

/** Ids that begin with a prefix of the picture's own, since two pictures may stand in one page. */
final class PrefixedIds extends SVGIDGenerator {

    private final String prefix;

    PrefixedIds(String prefix) {
        this.prefix = prefix;
    }

    @Override
    public String generateID(String kind) {
        return prefix + "-" + super.generateID(kind);
    }
}
