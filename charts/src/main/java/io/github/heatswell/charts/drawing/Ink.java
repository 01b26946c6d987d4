package io.github.heatswell.charts.drawing;

import java.awt.Color;

/**
 * The colours. They differ in lightness too, and none of them carries a meaning alone: dashes, widths, shapes and words
 * do, so a grey print says the same.
 */
final class Ink {

    static final Color PAPER = Color.WHITE;
    static final Color TEXT = new Color(0x1f2d36);
    static final Color QUIET_TEXT = new Color(0x52626c);
    static final Color GRID = new Color(0xe8ecee);
    static final Color HATCH = new Color(0xb9c2c7);
    /** Lines from words to what they are about. */
    static final Color LEADER = new Color(0x7b858b);

    static final Color FOOT = new Color(0x8a979f);

    static final Color PRESSURE = new Color(0x17506b);
    static final Color TEMPERATURE = new Color(0xa65a1a);
    static final Color ALARM = new Color(0x8c1c13);
    static final Color RELIEF = new Color(0xb0402f);
    static final Color SUPPLY = new Color(0x5b7030);
    static final Color PRECHARGE = new Color(0x6f4a86);

    static final Color TEMPERATURE_WASH = new Color(0xe9, 0xcf, 0xb4, 0x90);
    static final Color PRESSURE_WASH = new Color(0x8f, 0xb4, 0xc5, 0x90);

    static final Color RELIEF_WASH = new Color(0xd0938a);

    private static final Color[] RUNS = {
        new Color(0x5f93ab),
        new Color(0xc2571a),
        new Color(0x4d7a35),
        new Color(0x7a3f7d),
        new Color(0x2d3338),
        new Color(0x9a7a12)
    };

    private Ink() {}

    static Color run(int index) {
        return RUNS[index];
    }
}
