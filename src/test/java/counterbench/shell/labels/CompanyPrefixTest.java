package counterbench.shell.labels;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.TypedProgram;
import counterbench.db.TestStores;
import counterbench.printing.pdf.SymbolScanner;
import counterbench.shell.Status;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class CompanyPrefixTest {
    private static final String SHIPMENTS =
            "shipment,carrier,tracking\nS-030,Slow Boat,T1\nS-031,Slow Boat,T2\n";

    @TempDir Path folder;

    private Path paper() throws IOException {
        return Files.writeString(folder.resolve("shipments.csv"), SHIPMENTS);
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void shipments_of_a_site_that_has_one_are_numbered(TestStores kind) throws IOException {
        try (TypedProgram program = TypedProgram.withNew(kind).again("COUNTERBENCH_PIN", "2468")) {
            program.done(TypedProgram.SETUP + " --company-prefix 7610425");
            program.done("sign-in Ada");
            program.done("import \"" + paper() + "\"");
            String file = program.done("label shipment S-031 --to \"" + folder + "\"").strip();
            // 1024 for the second shipment, 1 for the first site; the check digit is worked out by
            // hand.
            assertThat(SymbolScanner.words(Path.of(file))).contains("(00)076104250000010251");
            assertThat(program.done("journal verify")).contains("holds");
        }
    }

    @Test
    void what_is_no_company_prefix_is_refused() {
        try (TypedProgram program = TypedProgram.withNew(TestStores.H2)) {
            TypedProgram.Output output =
                    program.type(TypedProgram.SETUP + " --company-prefix 76-10425");
            assertThat(output.status()).isEqualTo(Status.REFUSED);
            assertThat(output.messages())
                    .containsExactly(
                            "company prefix \"76-10425\": a company prefix has 7 to 10 digits and"
                                    + " nothing else; copy it from GS1's licence, or leave it out");
        }
    }
}
