package counterbench.durability;

import counterbench.db.Store;
import counterbench.db.StoreAddress;
import counterbench.db.TestStores;
import counterbench.shell.FakeShell;
import counterbench.shell.Larkmere;
import counterbench.shell.PlainDesk;
import counterbench.shell.Runner;
import counterbench.shell.bench.BenchCommand;
import java.io.BufferedReader;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

/** A technician's bench that is killed while it takes a batch of scans. */
final class BenchVictim {
    private BenchVictim() {}

    /**
     * Runs until it is killed or the batch is done.
     *
     * @param args the home folder, the server's address or nothing, the job
     */
    public static void main(String[] args) throws Exception {
        if (System.in.read() < 0) {
            return;
        }
        try (Store store = TestStores.open(StoreAddress.of(Path.of(args[0]), args[1]))) {
            Larkmere larkmere = Larkmere.in(store);
            FakeShell shell =
                    larkmere.shellOf(
                            Larkmere.OTIS, new BenchCommand(() -> store, larkmere.sites()));
            PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
            PlainDesk desk =
                    new PlainDesk(
                            shell.circumstances(),
                            new BufferedReader(
                                    new InputStreamReader(System.in, StandardCharsets.UTF_8)),
                            out,
                            out,
                            PlainDesk.View.NONE);
            new Runner(shell.commands()).run("bench " + args[2], desk);
            out.println("done");
        }
    }
}
