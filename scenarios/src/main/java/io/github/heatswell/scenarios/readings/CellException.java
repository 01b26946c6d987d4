package io.github.heatswell.scenarios.readings;

/** Something is wrong with one cell of a row. */
final class CellException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    /** Which cell of its row, 0 being the first. */
    private final int cell;

    CellException(int cell, String message) {
        super(message);
        this.cell = cell;
    }

    int cell() {
        return cell;
    }
}
