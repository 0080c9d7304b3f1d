package counterbench.shell.intake;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.shell.FakeShell;
import counterbench.shell.Status;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.Normalizer;
import java.util.List;
import org.junit.jupiter.api.Test;

/** One name is one name, in whichever of Unicode's forms (UAX #15) a program wrote it. */
class ComposedNamesTest extends LarkmerePaper {
    private FakeShell.Output take(String kind, String text, Normalizer.Form form)
            throws IOException {
        Path file = folder.resolve(kind + ".csv");
        Files.writeString(file, Normalizer.normalize(text, form));
        return maren().run(List.of("import", file.toString()));
    }

    @Test
    void a_key_is_known_again_in_the_other_form_and_never_holds_two_values() throws IOException {
        String kits = "kit,kit_part,received_at,expires_on\nKä-1,HB-3010-K,2026-03-01 08:00,";
        assertThat(take("kits", kits + "2026-12-31\n", Normalizer.Form.NFD).status())
                .isEqualTo(Status.DONE);
        assertThat(take("kits", kits + "2026-12-31\n", Normalizer.Form.NFC).messages())
                .containsExactly("nothing was new: all rows are known already");
        FakeShell.Output other = take("kits", kits + "2026-02-28\n", Normalizer.Form.NFC);
        assertThat(other.status()).isEqualTo(Status.REFUSED);
        assertThat(other.messages().get(0))
                .startsWith("kits.csv, row 2, expires_on \"2026-02-28\": differs");
    }

    @Test
    void a_person_and_a_job_are_found_in_the_other_form() throws IOException {
        take("people", "name,roles\nZoë Ångström,technician\n", Normalizer.Form.NFC);
        String jobs =
                """
                job,campaign,vin,opened_at,technician
                Jö-1,HB-0417,0WBCB12D7NA002799,2026-03-02 08:00,Zoë Ångström
                """;
        assertThat(take("jobs", jobs, Normalizer.Form.NFD).status()).isEqualTo(Status.DONE);
        String issues = "job,at,part,quantity\nJö-1,2026-03-02 09:00,HB-3013,1\n";
        assertThat(take("issues", issues, Normalizer.Form.NFC).status()).isEqualTo(Status.DONE);
        assertThat(take("issues", issues, Normalizer.Form.NFD).messages())
                .containsExactly("nothing was new: all rows are known already");
    }
}
