package io.github.heatswell.scenarios.output;

import java.io.IOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Map;

/**
 * Gives complete files their names, all or none: if one of them cannot get its name, such as a table that a spreadsheet keeps
 * open, the others go and what stood there before comes back.
 */
final class Exchange {

    private final Deque<Step> steps = new ArrayDeque<>();

    /** One file on its way, and where the one of its name is kept meanwhile; null if there was none. */
    private record Step(Path temporary, Path target, Path former) {}

    /**
     * Moves the files.
     *
     * @param moves targets by the temporary names
     * @throws OutputException if that cannot be done; then everything is as before
     */
    void publish(Map<Path, Path> moves) throws OutputException {
        for (Map.Entry<Path, Path> move : moves.entrySet()) {
            Path target = move.getValue();
            try {
                Path former = Files.exists(target, LinkOption.NOFOLLOW_LINKS) ? keep(target) : null;
                steps.push(new Step(move.getKey(), target, former));
                replace(move.getKey(), target);
            } catch (IOException e) {
                String left = undo();
                throw new OutputException(Reasons.cannotWrite(target, e).getMessage() + left, e);
            }
        }
        for (Step step : steps) {
            forget(step.former());
        }
    }

    /** A second name for the file, so that it never misses its own; another name where there are no second ones. */
    private static Path keep(Path target) throws IOException {
        Path former = TemporaryName.beside(target);
        try {
            Files.createLink(former, target);
        } catch (IOException | UnsupportedOperationException e) {
            replace(target, former);
        }
        return former;
    }

    private static void replace(Path from, Path to) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    /** Puts everything back; what could not be, for the sentence on the failure. */
    private String undo() {
        StringBuilder left = new StringBuilder();
        for (Step step : steps) {
            try {
                undo(step);
            } catch (IOException e) {
                left.append("; what stood in ").append(step.target()).append(" before is kept as ");
                left.append(step.former());
            }
        }
        return left.toString();
    }

    private static void undo(Step step) throws IOException {
        boolean moved = !Files.exists(step.temporary(), LinkOption.NOFOLLOW_LINKS);
        if (step.former() == null) {
            if (moved) {
                Files.deleteIfExists(step.target());
            }
            return;
        }
        if (moved || !Files.exists(step.target(), LinkOption.NOFOLLOW_LINKS)) {
            replace(step.former(), step.target());
        }
        // Of two names for one file, a move leaves both.
        forget(step.former());
    }

    private static void forget(Path former) {
        if (former == null) {
            return;
        }
        try {
            Files.deleteIfExists(former);
        } catch (IOException e) {
            // It takes room, and does no harm.
            return;
        }
    }
}
