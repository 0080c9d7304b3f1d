package counterbench.care.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import counterbench.db.Migrations;
import counterbench.db.Store;
import counterbench.db.StoreAddress;
import counterbench.db.TestStores;
import counterbench.facts.FactKind;
import counterbench.facts.FactRow;
import counterbench.facts.TestRows;
import counterbench.journal.Chain;
import counterbench.journal.Draft;
import counterbench.journal.store.JooqJournal;
import counterbench.journal.store.Verification;
import counterbench.people.Pin;
import counterbench.people.store.CheckPin;
import counterbench.shared.Progress;
import counterbench.shared.Refused;
import counterbench.shared.Site;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.time.InstantSource;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class BackupTest {
    private static final Instant NOW = CareFacts.NOW;
    @TempDir Path folder;

    private static TestStores other(TestStores kind) {
        return kind == TestStores.H2 ? TestStores.POSTGRES : TestStores.H2;
    }

    private static Site fill(Store store) {
        Site site = CareFacts.setUp(store);
        CareFacts.record(
                store,
                site,
                job("J-1"),
                odd("J-1"),
                CareFacts.removed("C-1", "J-1"),
                CareFacts.core("C-1", "sent").with("other_site", "SOUTH"));
        new JooqJournal(store)
                .record(
                        Draft.of(site, NOW, "Ada", "test", "\\N, \"quoted\"\r\nand \\\\ more"),
                        List.of(job("J-2"), calibration(), odd("J-2")));
        return site;
    }

    private static FactRow job(String job) {
        return CareFacts.job(job).with("work_order", "");
    }

    /** Everything that a text file could get wrong. */
    private static FactRow odd(String job) {
        return new FactRow(
                FactKind.USES,
                TestRows.row(FactKind.USES)
                        .with("job", job)
                        .with("part", "\\N")
                        .with("quantity", new BigDecimal("0.001"))
                        .with("condition", "new")
                        .with("at", Instant.parse("1969-12-31T23:59:59.999999Z"))
                        .with("lot", "\\")
                        .with("kit", "a,\"b\"\n\rc\t\u001b é \u00a0")
                        .with("reason", " blank ahead and behind ")
                        .values(),
                "#ref, 1");
    }

    private static FactRow calibration() {
        return TestRows.row(FactKind.CALIBRATIONS)
                .with("instrument", "TW-1")
                .with("calibrated_on", LocalDate.of(1582, 10, 15))
                .with("due_on", LocalDate.of(9999, 12, 31))
                .with("uncertainty_percent", new BigDecimal("123456789012.123456"));
    }

    @ParameterizedTest
    @EnumSource(TestStores.class)
    void a_backup_is_restored_into_either_kind_of_store_and_gives_the_same_backup(TestStores kind)
            throws IOException {
        for (TestStores to : TestStores.values()) {
            Path first = folder.resolve(kind + "-" + to + ".zip");
            Path second = folder.resolve(kind + "-" + to + "-again.zip");
            StoreAddress target = to.address();
            Backups backups = new Backups(folder);
            try (Store store = kind.open()) {
                fill(store);
                backups.write(store, first, NOW, Progress.SILENT);
            }
            RestoreBackup.Result result =
                    new RestoreBackup(target, Progress.SILENT).run(first, NOW);
            Verification.Outcome north = north(result);
            assertThat(north.broken()).isEmpty();
            assertThat(north.entries()).isEqualTo(4);
            try (Store store = TestStores.open(target)) {
                backups.write(store, second, NOW, Progress.SILENT);
                Backups.check(second, Progress.SILENT);
                assertThat(linesOf(second)).isEqualTo(linesOf(first)).isNotEmpty();
                assertThat(
                                new CheckPin(() -> store, InstantSource.fixed(NOW))
                                        .signIn("Ada", new Pin("2468"))
                                        .name())
                        .isEqualTo("Ada");
                Site site = CareFacts.siteOf(store);
                new JooqJournal(store)
                        .record(Draft.of(site, NOW, "Ada", "test", "after"), List.of(job("J-3")));
                assertThat(new VerifyJournal(store).run(site, NOW).entries()).isEqualTo(5);
            }
        }
    }

    @ParameterizedTest
    @EnumSource(TestStores.class)
    void a_store_that_is_not_empty_is_left_alone(TestStores kind) {
        Path file = folder.resolve("backup.zip");
        try (Store store = kind.open()) {
            fill(store);
            new Backups(folder).write(store, file, NOW, Progress.SILENT);
            assertThatThrownBy(
                            () ->
                                    new RestoreBackup(store.address(), Progress.SILENT)
                                            .run(file, NOW))
                    .isInstanceOf(Refused.class)
                    .hasMessageContaining("the store is not empty");
            assertThat(new VerifyJournal(store).run(CareFacts.siteOf(store), NOW).entries())
                    .isEqualTo(4);
        }
    }

    @ParameterizedTest
    @EnumSource(TestStores.class)
    void tables_that_hold_nothing_yet_make_room_and_strangers_do_not(TestStores kind)
            throws SQLException {
        Path file = folder.resolve("backup.zip");
        try (Store store = other(kind).open()) {
            fill(store);
            new Backups(folder).write(store, file, NOW, Progress.SILENT);
        }
        try (Store store = kind.open()) {
            assertThat(
                            new RestoreBackup(store.address(), Progress.SILENT)
                                    .run(file, NOW)
                                    .journals())
                    .containsKey("NORTH");
        }
        StoreAddress strange = kind.address();
        try (Store store = Store.asItIs(strange);
                Connection connection = store.connect();
                Statement statement = connection.createStatement()) {
            statement.execute("create table site (owner varchar(10))");
            assertThatThrownBy(() -> new RestoreBackup(strange, Progress.SILENT).run(file, NOW))
                    .hasMessageContaining("could not be brought up to date");
            statement.execute("select owner from site");
        }
    }

    @ParameterizedTest
    @EnumSource(TestStores.class)
    void a_backup_is_written_before_a_migration_and_can_be_restored(TestStores kind) {
        StoreAddress old = kind.address();
        Backups backups = new Backups(folder.resolve("backups"));
        try (Store store = Store.asItIs(old)) {
            Migrations.migrate(store, "002");
            fillOld(store);
        }
        var migrations =
                new Migrations((store, from) -> backups.write(store, NOW, Progress.SILENT));
        try (Store store = Store.open(old, migrations)) {
            assertThat(Migrations.versionOf(store)).contains(Migrations.LATEST);
        }
        assertThat(backups.all()).hasSize(1);
        Path backup = backups.all().get(0);
        assertThat(backup.getFileName()).asString().endsWith("-v002.zip");
        RestoreBackup.Result result =
                new RestoreBackup(other(kind).address(), Progress.SILENT).run(backup, NOW);
        assertThat(result.manifest().version()).isEqualTo("002");
        assertThat(north(result).broken()).isEmpty();
    }

    /** In plain SQL, since the program writes sites as they are now. */
    private static void fillOld(Store store) {
        store.run(
                sql -> {
                    sql.execute(
                            "insert into site (site_no, site, name, zone, currency, job_days,"
                                    + " acknowledgement_days, credit_days) values (1, 'NORTH',"
                                    + " 'North garage', 'America/Chicago', 'USD', 14, 21, 45)");
                    sql.execute(
                            "insert into journal_head (site_no, last_number, last_hash,"
                                    + " next_job_no) values (1, 0, ?, 1)",
                            Chain.START);
                });
    }

    @ParameterizedTest
    @EnumSource(TestStores.class)
    void a_backup_holds_one_moment_while_others_write(TestStores kind) throws Exception {
        ExecutorService other = Executors.newSingleThreadExecutor();
        AtomicBoolean enough = new AtomicBoolean();
        try (Store store = kind.open();
                Store second = TestStores.open(store.address())) {
            Site site = fill(store);
            Future<Integer> writing = other.submit(() -> writeUntil(enough, second, site));
            List<Path> files = new ArrayList<>();
            for (int i = 0; i < 5; i++) {
                Path file = folder.resolve(i + ".zip");
                new Backups(folder).write(store, file, NOW, Progress.SILENT);
                files.add(file);
            }
            enough.set(true);
            assertThat(writing.get()).isPositive();
            for (Path file : files) {
                StoreAddress target = TestStores.H2.address();
                RestoreBackup.Result result =
                        new RestoreBackup(target, Progress.SILENT).run(file, NOW);
                assertThat(north(result).broken()).isEmpty();
            }
        } finally {
            enough.set(true);
            other.shutdownNow();
        }
    }

    private static int writeUntil(AtomicBoolean enough, Store store, Site site) {
        int count = 0;
        do {
            String job = "J-W" + count++;
            new JooqJournal(store)
                    .record(
                            Draft.of(site, NOW, "Ada", "test", "busy"),
                            List.of(job(job), odd(job)));
        } while (!enough.get());
        return count;
    }

    @ParameterizedTest
    @EnumSource(TestStores.class)
    void a_backup_is_whole_or_not_there_and_only_its_owners(TestStores kind) throws IOException {
        Path file = folder.resolve("backup.zip");
        try (Store store = kind.open()) {
            fill(store);
            Backups backups = new Backups(folder);
            backups.write(store, file, NOW, Progress.SILENT);
            assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
                    .isEqualTo("rw-------");
            assertThat(backups.begun()).isEmpty();
            assertThatThrownBy(() -> backups.write(store, file, NOW, Progress.SILENT))
                    .hasMessageContaining("there is such a file already");
            assertThatThrownBy(
                            () ->
                                    backups.write(
                                            store,
                                            folder.resolve("none/backup.zip"),
                                            NOW,
                                            Progress.SILENT))
                    .hasMessageContaining("it cannot be written");
        }
        byte[] bytes = Files.readAllBytes(file);
        for (int cut : List.of(0, 10, bytes.length / 2, bytes.length - 1)) {
            Path broken =
                    Files.write(folder.resolve("cut.zip"), java.util.Arrays.copyOf(bytes, cut));
            assertThatThrownBy(() -> Backups.check(broken, Progress.SILENT))
                    .isInstanceOf(Refused.class);
        }
        int refused = 0;
        for (int at = 0; at < bytes.length; at += bytes.length / 64) {
            byte[] changed = bytes.clone();
            changed[at] ^= 0x10;
            refused += refusedOrTheSame(file, Files.write(folder.resolve("changed.zip"), changed));
        }
        assertThat(refused).isGreaterThan(16);
    }

    /** A changed byte of a zip may change nothing in it, such as the time of one of its files. */
    private static int refusedOrTheSame(Path file, Path changed) throws IOException {
        try {
            Backups.check(changed, Progress.SILENT);
        } catch (Refused e) {
            return 1;
        }
        assertThat(linesOf(changed)).isEqualTo(linesOf(file));
        return 0;
    }

    /** The lines of every table in any order, which is the store's own. */
    private static Map<String, List<String>> linesOf(Path file) throws IOException {
        Map<String, List<String>> lines = new TreeMap<>();
        try (ZipFile zip = new ZipFile(file.toFile())) {
            for (ZipEntry entry : Collections.list(zip.entries())) {
                if (entry.getName().startsWith("tables/")) {
                    String text =
                            new String(
                                    zip.getInputStream(entry).readAllBytes(),
                                    StandardCharsets.UTF_8);
                    lines.put(entry.getName(), text.lines().sorted().toList());
                }
            }
        }
        return lines;
    }

    private static Verification.Outcome north(RestoreBackup.Result result) {
        return Objects.requireNonNull(result.journals().get("NORTH"));
    }
}
