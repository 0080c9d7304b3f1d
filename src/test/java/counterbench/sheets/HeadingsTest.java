package counterbench.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.facts.FactRow;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class HeadingsTest {
    private static final String COUNT = "2026-03-05 10:00,4,QM-1";

    @TempDir Path folder;

    private FactRow count(String headings, String cells) {
        return Read.facts(Read.file(folder, "counts.csv", headings + "\n" + cells + "\n")).get(0);
    }

    private java.util.List<String> refusal(String name, String headings) {
        return Read.refusal(Read.file(folder, name, headings + "\n"));
    }

    @Test
    void headings_come_in_any_order_and_letter_case() {
        assertThat(count(" Part ,QUANTITY,Counted_At", "QM-1,4,2026-03-05 10:00").text("part"))
                .isEqualTo("QM-1");
    }

    @Test
    void a_plain_fact_may_bear_the_papers_own_number() {
        assertThat(count("counted_at,quantity,part,ref", COUNT + ",Z-9").ref()).isEqualTo("Z-9");
        assertThat(refusal("claims.csv", "claim,job,submitted_on,ref"))
                .singleElement()
                .asString()
                .contains("heading \"ref\": is no heading of claims, which are known by claim");
    }

    @Test
    void columns_of_ones_own_and_our_marks_are_passed_over() {
        FactRow row =
                count(
                        "counted_at,quantity,part,x-note,Refused_Because",
                        COUNT + ",\u0007,nonsense");
        assertThat(row.values()).hasSize(5).contains("QM-1");
    }

    @Test
    void an_unknown_heading_is_refused_by_name_with_the_near_match() {
        assertThat(refusal("counts.csv", "counted_at,quantitty,quantity,shelf"))
                .containsExactly(
                        "counts.csv, heading \"quantitty\": is no heading of counts; did you mean"
                                + " quantity? (columns of your own begin with x-)",
                        "counts.csv, heading \"shelf\": is no heading of counts; there are"
                                + " counted_at, quantity, part, kit, by, site, ref (columns of your"
                                + " own begin with x-)");
    }

    @Test
    void a_heading_twice_is_refused() {
        assertThat(refusal("counts.csv", "counted_at,quantity,part,Part"))
                .containsExactly(
                        "counts.csv, heading \"Part\": is there twice; remove one of the two");
    }

    @Test
    void a_missing_heading_is_refused() {
        assertThat(refusal("uses.csv", "job,part,at"))
                .containsExactly(
                        "uses.csv: has no heading quantity, condition; uses need job, part,"
                                + " quantity, condition, at");
    }

    @Test
    void semicolons_between_columns_are_seen() {
        assertThat(refusal("counts.csv", "counted_at;quantity;part").get(0))
                .contains("separate the columns by commas");
    }

    @Test
    void each_other_heading_of_vehicles_is_an_attribute_that_a_pack_knows() {
        String sheet = "campaign,vin,transmission,Engine\nQM-26-014,0AB 1,automatic,\n";
        FactRow row = Read.facts(Read.file(folder, "vehicles.csv", sheet)).get(0);
        assertThat(row.text("attributes")).isEqualTo("transmission=automatic");
        assertThat(row.text("vin")).isEqualTo("0AB 1");

        sheet = "campaign,vin,transmission,Engine\nQM-26-014,0AB1,automatic,big\n";
        row = Read.facts(Read.file(folder, "vehicles.csv", sheet)).get(0);
        assertThat(row.text("attributes")).isEqualTo("engine=big; transmission=automatic");

        assertThat(refusal("vehicles.csv", "campaign,vin,attributes,colour")).hasSize(2);
    }

    @Test
    void an_attribute_is_known_in_any_letter_case() {
        String sheet = "campaign,vin,CAB\nQM-26-014,0AB1,short\n";
        FactRow row = Read.facts(Read.file(folder, "vehicles.csv", sheet)).get(0);
        assertThat(row.text("attributes")).isEqualTo("Cab=short");
    }

    @Test
    void a_misspelled_attribute_is_refused_with_the_near_one_and_all_there_are() {
        assertThat(refusal("vehicles.csv", "campaign,vin,transmision,colour"))
                .containsExactly(
                        "vehicles.csv, heading \"transmision\": is no heading of vehicles and no"
                                + " attribute that a campaign declares; did you mean transmission?"
                                + " attributes are Cab, engine, transmission (columns of your own"
                                + " begin with x-)",
                        "vehicles.csv, heading \"colour\": is no heading of vehicles and no"
                                + " attribute that a campaign declares; there are campaign, vin,"
                                + " model, site; attributes are Cab, engine, transmission (columns"
                                + " of your own begin with x-)");
    }

    @Test
    void an_answer_may_not_break_the_list() {
        String sheet = "campaign,vin,engine\nQM-26-014,0AB1,a;b\n";
        assertThat(Read.problems(Read.file(folder, "vehicles.csv", sheet)).get(0))
                .contains("engine \"a;b\": has a ; or =");
    }
}
