package io.github.heatswell.study;

/** Is told now and then how far a study has come; never from two threads at once, but not always from the same. */
@FunctionalInterface
public interface StudyProgress {

    /**
     * Takes the news.
     *
     * @param done how many runs of the model are finished; never fewer than last time
     * @param total how many there will be
     */
    void done(int done, int total);
}
