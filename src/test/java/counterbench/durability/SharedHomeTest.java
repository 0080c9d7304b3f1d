package counterbench.durability;

import static counterbench.db.generated.Tables.SITE;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import counterbench.db.ConnectionBroken;
import counterbench.db.Store;
import counterbench.db.StoreAddress;
import counterbench.db.TestStores;
import counterbench.journal.Entry;
import counterbench.journal.store.EntryReader;
import counterbench.journal.store.JooqJournal;
import counterbench.journal.store.Verification;
import counterbench.people.store.JooqSites;
import counterbench.shared.TestSites;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.NetworkInterface;
import java.net.Socket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.awaitility.Awaitility;
import org.jooq.Cursor;
import org.jooq.DSLContext;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Several shells share the embedded store of one home, and nobody else reaches it. */
class SharedHomeTest {
    private static final int PATIENCE_MILLIS = 2_000;
    private static final int MANY_ROWS = 300_000;

    /** 127.0.0.1 as Linux writes it, also within an IPv6 address. */
    private static final String LOOPBACK = "0100007F";

    private final StoreAddress address = TestStores.H2.address();

    @BeforeEach
    void setUp() {
        try (Store store = TestStores.open(address)) {
            store.run(sql -> JooqSites.add(sql, TestSites.NORTH));
        }
    }

    @Test
    void two_processes_record_in_turns_and_one_goes_on_when_the_other_is_killed() throws Exception {
        List<String> theirs = new ArrayList<>();
        List<UUID> ours = new ArrayList<>();
        try (VictimProcess victim = VictimProcess.start(address).go()) {
            theirs.add(Objects.requireNonNull(victim.next()));
            try (Store store = TestStores.open(address)) {
                for (int i = 0; i < 20; i++) {
                    ours.add(recordHere(store, "J-A" + i).id());
                    theirs.add(Objects.requireNonNull(victim.next()));
                }
                theirs.addAll(victim.kill());
                for (int i = 0; i < 20; i++) {
                    ours.add(recordHere(store, "J-B" + i).id());
                }
            }
        }
        try (Store store = TestStores.open(address)) {
            Verification.Outcome outcome =
                    store.readSnapshot(sql -> Verification.of(sql, TestSites.NORTH));
            assertThat(outcome.broken()).isEmpty();
            theirs.forEach(line -> ours.add(UUID.fromString(line.split(" ", -1)[1])));
            for (UUID id : ours) {
                Optional<Entry> found = store.read(sql -> EntryReader.byId(sql, id));
                assertThat(found).isPresent();
            }
        }
    }

    @Test
    void what_is_read_while_the_shell_that_serves_the_store_dies_says_so_and_is_read_again()
            throws Exception {
        try (VictimProcess victim = VictimProcess.start(address).go()) {
            assertThat(victim.next()).isNotNull();
            try (Store store = TestStores.open(address)) {
                assertThatThrownBy(() -> store.read(sql -> sitesOnceDead(sql, victim)))
                        .isInstanceOf(ConnectionBroken.class)
                        .hasMessageContaining("enter the command again");
                assertThat(sites(store)).isEqualTo(1);
            }
        }
        try (VictimProcess victim = VictimProcess.start(address).go()) {
            assertThat(victim.next()).isNotNull();
            try (Store store = TestStores.open(address)) {
                int sites = store.again(() -> store.read(sql -> sitesOnceDead(sql, victim)));
                assertThat(sites).isEqualTo(1);
            }
        }
    }

    @Test
    void rows_that_were_still_coming_when_the_serving_shell_died_are_read_again() throws Exception {
        try (VictimProcess victim = VictimProcess.start(address).go()) {
            assertThat(victim.next()).isNotNull();
            try (Store store = TestStores.open(address)) {
                assertThatThrownBy(() -> store.read(sql -> rowsAround(sql, victim)))
                        .isInstanceOf(ConnectionBroken.class);
            }
        }
        try (VictimProcess victim = VictimProcess.start(address).go()) {
            assertThat(victim.next()).isNotNull();
            try (Store store = TestStores.open(address)) {
                int rows = store.again(() -> store.read(sql -> rowsAround(sql, victim)));
                assertThat(rows).isEqualTo(MANY_ROWS);
            }
        }
    }

    /** Reads on after the death of the shell that serves the store, if it still lived. */
    private static int rowsAround(DSLContext sql, VictimProcess victim) {
        int rows = 0;
        try (Cursor<?> cursor =
                sql.resultQuery("select 1 from system_range(1, " + MANY_ROWS + ")").fetchLazy()) {
            for (boolean more = cursor.hasNext(); more; more = cursor.hasNext()) {
                cursor.fetchNext();
                if (rows++ == 0) {
                    victim.close();
                }
            }
        }
        return rows;
    }

    private static int sites(Store store) {
        return store.read(sql -> sql.fetchCount(SITE));
    }

    private static int sitesOnceDead(DSLContext sql, VictimProcess victim) {
        victim.close();
        Awaitility.await().until(() -> !victim.isAlive());
        return sql.fetchCount(SITE);
    }

    private static Entry recordHere(Store store, String job) {
        return new JooqJournal(store).record(Victim.draft(TestSites.NORTH), Victim.act(job));
    }

    @Test
    void the_store_is_reached_from_this_machine_only() throws Exception {
        try (VictimProcess victim = VictimProcess.start(address).go()) {
            assertThat(victim.next()).isNotNull();
            int port = portOf(TestStores.folder(address).resolve("store.lock.db"));
            knock(loopback(1), port);
            for (InetAddress elsewhere : otherAddresses()) {
                assertThatThrownBy(() -> knock(elsewhere, port))
                        .as(elsewhere.toString())
                        .isInstanceOf(IOException.class);
            }
            assertThat(listeningAt(port)).allMatch(at -> at.endsWith(LOOPBACK));
        }
    }

    /** The embedded store writes into its lock file where it listens. */
    private static int portOf(Path lock) throws IOException {
        Matcher server = Pattern.compile("server=.*?(\\d+)\\R").matcher(Files.readString(lock));
        assertThat(server.find()).isTrue();
        return Integer.parseInt(server.group(1));
    }

    private static void knock(InetAddress at, int port) throws IOException {
        try (Socket socket = new Socket()) {
            socket.connect(new InetSocketAddress(at, port), PATIENCE_MILLIS);
        }
    }

    /** 127.0.0.1 and its neighbours. */
    private static InetAddress loopback(int last) throws IOException {
        return InetAddress.getByAddress(new byte[] {127, 0, 0, (byte) last});
    }

    /** This machine's other addresses, of which 127.0.0.2 is one on many systems. */
    private static List<InetAddress> otherAddresses() throws IOException {
        List<InetAddress> addresses = new ArrayList<>();
        addresses.add(loopback(2));
        for (NetworkInterface each : Collections.list(NetworkInterface.getNetworkInterfaces())) {
            Collections.list(each.getInetAddresses()).stream()
                    .filter(address -> !address.isLoopbackAddress())
                    .forEach(addresses::add);
        }
        return addresses;
    }

    /** Where the system says that somebody listens at a port; only Linux tells. */
    private static List<String> listeningAt(int port) throws IOException {
        List<String> found = new ArrayList<>();
        for (String table : List.of("/proc/net/tcp", "/proc/net/tcp6")) {
            if (Files.isReadable(Path.of(table))) {
                Pattern listening =
                        Pattern.compile(
                                "\\s*\\d+: ([0-9A-F]+):"
                                        + String.format("%04X", port)
                                        + " \\S+ 0A .*");
                Files.readAllLines(Path.of(table)).stream()
                        .map(listening::matcher)
                        .filter(Matcher::matches)
                        .forEach(m -> found.add(m.group(1)));
            }
        }
        return found;
    }
}
