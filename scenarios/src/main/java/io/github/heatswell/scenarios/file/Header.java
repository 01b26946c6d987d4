package io.github.heatswell.scenarios.file;

/**
 * What a scenario says about itself.
 *
 * @param title its heading, possibly nothing
 * @param question what it asks, possibly nothing
 * @param expectation what is expected to come out, possibly nothing
 */
record Header(String title, String question, String expectation) {

    /** The texts while being read. */
    static final class Draft {
        private String title = "";
        private String question = "";
        private String expectation = "";

        void title(String value) {
            title = value;
        }

        void question(String value) {
            question = value;
        }

        void expectation(String value) {
            expectation = value;
        }

        Header end() {
            return new Header(title, question, expectation);
        }
    }
}
