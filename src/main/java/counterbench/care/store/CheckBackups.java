package counterbench.care.store;

import counterbench.care.Check;
import counterbench.care.Manifest;
import counterbench.shared.Progress;
import counterbench.shared.Refused;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** Reads every backup to its end. */
final class CheckBackups {
    private static final Duration OLD = Duration.ofDays(7);

    private final Backups backups;
    private final Progress progress;
    private final Consumer<Check> checks;

    CheckBackups(Backups backups, Progress progress, Consumer<Check> checks) {
        this.backups = backups;
        this.progress = progress;
        this.checks = checks;
    }

    void run(Instant now) {
        List<Path> files = backups.all();
        Optional<Instant> newest =
                files.stream().map(this::check).flatMap(Optional::stream).max(Instant::compareTo);
        if (newest.isEmpty()) {
            checks.accept(
                    Check.note("backups", "there is none that could be restored", "type backup"));
        } else if (newest.get().isBefore(now.minus(OLD))) {
            checks.accept(Check.note("backups", "the newest is of " + newest.get(), "type backup"));
        }
        backups.begun().forEach(this::noteBegun);
    }

    private Optional<Instant> check(Path file) {
        String what = "backup " + file.getFileName();
        try {
            Manifest manifest = Backups.check(file, progress);
            checks.accept(
                    Check.good(
                            what,
                            "whole: "
                                    + manifest.rows()
                                    + " rows of "
                                    + manifest.writtenAt()
                                    + ", version "
                                    + manifest.version()));
            return Optional.of(manifest.writtenAt());
        } catch (Refused e) {
            checks.accept(
                    Check.bad(
                            what,
                            e.problems().get(0).because(),
                            "delete it, and type backup to write another one"));
            return Optional.empty();
        }
    }

    private void noteBegun(Path file) {
        checks.accept(
                Check.note(
                        "backup " + file.getFileName(),
                        "it was begun and not finished",
                        "delete it, unless one is being written just now"));
    }
}
