package counterbench.sheets.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import counterbench.shared.Refused;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReportLayoutsTest {
    @TempDir Path home;

    private ReportLayout changed(String yaml) throws IOException {
        Files.createDirectories(home.resolve("reports"));
        Files.writeString(home.resolve("reports/parts.yaml"), yaml);
        return new ReportLayouts(home).layout("parts");
    }

    private List<String> refusal(String yaml) {
        Refused refused = catchThrowableOfType(Refused.class, () -> changed(yaml));
        return refused.problems().stream().map(p -> p.message()).toList();
    }

    @Test
    void the_programs_own_layouts_have_the_sheets_that_are_promised() {
        assertThat(ReportLayouts.programs("parts").sheets())
                .extracting(SheetLayout::sheet)
                .containsExactly(
                        "Balance",
                        "Consumption",
                        "Movements",
                        "Kits",
                        "Expiry",
                        "Counts",
                        "Findings");
        assertThat(ReportLayouts.programs("warranty").sheets())
                .extracting(SheetLayout::sheet)
                .containsExactly("Claims", "Jobs", "Evidence", "Cores", "Credits", "Findings");
        assertThat(ReportLayouts.programs("parts").notes()).isEqualTo("Notes");
        assertThat(ReportLayouts.programs("parts").charts()).isNotEmpty();
        assertThat(ReportLayouts.programs("warranty").charts()).isNotEmpty();
    }

    @Test
    void without_a_file_of_its_own_a_workshop_has_the_programs_layout() {
        assertThat(new ReportLayouts(home).layout("parts"))
                .isEqualTo(ReportLayouts.programs("parts"));
    }

    @Test
    void a_workshop_changes_headings_order_and_columns() throws IOException {
        ReportLayout layout =
                changed(
                        """
                        title: Teile
                        paper: a4
                        notes: Notizen
                        sheets:
                          - sheet: Kits
                            title: Sätze
                            columns:
                              - {field: unit_cost, heading: Kosten, width: 12}
                              - {field: kit}
                              - {field: missing, format: text, means: was fehlte}
                        """);
        assertThat(layout.title()).isEqualTo("Teile");
        assertThat(layout.paper()).isEqualTo(ReportLayout.Paper.A4);
        assertThat(layout.notes()).isEqualTo("Notizen");
        assertThat(layout.leftOut()).contains("Balance").doesNotContain("Kits");
        SheetLayout kits = layout.sheets().get(0);
        assertThat(kits.title()).isEqualTo("Sätze");
        assertThat(kits.fields()).contains("received_at");
        assertThat(kits.columns())
                .containsExactly(
                        new ColumnLayout("unit_cost", "Kosten", 12, CellFormat.MONEY, false, ""),
                        new ColumnLayout("kit", "Kit", 0, CellFormat.TEXT, false, ""),
                        new ColumnLayout(
                                "missing", "Missing", 24, CellFormat.TEXT, false, "was fehlte"));
    }

    @Test
    void every_mistake_is_refused_with_its_place() {
        assertThat(
                        refusal(
                                """
                                sheets:
                                  - sheet: Kits
                                    columns:
                                      - {field: kitt}
                                      - {field: kit, format: money}
                                      - {field: lot, heading: ""}
                                      - {field: unit_cost, format: date}
                                      - {field: job, width: wide, total: true}
                                      - {field: state, colour: red}
                                      - {field: job}
                                  - sheet: Boxes
                                    columns: [{field: kit}]
                                """))
                .containsExactly(
                        "parts.yaml:4:17: field \"kitt\": is not known; did you mean kit?",
                        "parts.yaml:5:30: format money: kit is text; use text",
                        "parts.yaml:6:31: heading: is empty or no plain text; write it on this"
                                + " line",
                        "parts.yaml:7:36: format date: unit_cost is money; use that, or text",
                        "parts.yaml:8:29: width \"wide\": is no width; write characters, 1 to 255,"
                                + " or leave it out to fit",
                        "parts.yaml:8:42: total: text cannot be summed; leave it out",
                        "parts.yaml:9:24: key \"colour\": is not known; there are field, heading,"
                                + " width, format, total, means",
                        "parts.yaml:10:9: field \"job\": is there twice; keep one",
                        "parts.yaml:11:12: sheet \"Boxes\": is not known; there are Balance,"
                                + " Consumption, Movements, Kits, Expiry, Counts, Findings");
    }

    @Test
    void charts_are_over_sheets_and_numbers_that_there_are() {
        String sheets =
                """
                sheets:
                  - sheet: Kits
                    columns: [{field: kit_part}, {field: unit_cost}, {field: state}]
                  - sheet: Counts
                    columns: [{field: part}, {field: counted}]
                charts:
                """;
        assertThat(
                        refusal(
                                sheets
                                        + "  - {type: pie, title: T, of: Kits, categories: state,"
                                        + " series: [state]}\n"
                                        + "  - {type: bar, title: T, of: Counts, categories: part,"
                                        + " series: [counted, rows], place: Kits}\n"
                                        + "  - {type: bar, title: T, of: Counts}\n"))
                .containsExactly(
                        "parts.yaml:7:12: type \"pie\": is not known; there are bar, column, line",
                        "parts.yaml:7:65: field \"state\": is no number; sum another",
                        "parts.yaml:8:89: place \"Kits\": stands before Counts; place the chart on"
                                + " that sheet or a later one",
                        "parts.yaml:9:5: chart: has no categories, series; add it");
    }

    @Test
    void rows_to_be_known_apart_are_the_programs_unless_a_workshop_says_its_own()
            throws IOException {
        Files.createDirectories(home.resolve("reports"));
        Path file = home.resolve("reports/warranty.yaml");
        String claims = "paper: a3\nsheets:\n  - sheet: Claims\n    columns: [{field: claim}]\n";
        Files.writeString(file, claims);
        ReportLayout layout = new ReportLayouts(home).layout("warranty");
        assertThat(layout.paper()).isEqualTo(ReportLayout.Paper.A3);
        assertThat(layout.sheets().get(0).apart())
                .isEqualTo(ReportLayouts.programs("warranty").sheets().get(0).apart())
                .isNotNull();

        Files.writeString(file, claims + "    apart: {field: state, are: denied, heading: No}\n");
        assertThat(new ReportLayouts(home).layout("warranty").sheets().get(0).apart())
                .isEqualTo(new SheetLayout.Apart("state", List.of("denied"), "No"));

        Files.writeString(file, claims + "    apart: {field: state}\n");
        assertThat(
                        catchThrowableOfType(
                                        Refused.class,
                                        () -> new ReportLayouts(home).layout("warranty"))
                                .problems())
                .extracting(p -> p.message())
                .containsExactly(
                        "warranty.yaml:5:12: apart: has no field, are or heading; write all three");
    }

    @Test
    void names_that_no_sheet_can_have_are_refused() {
        assertThat(
                        refusal(
                                "sheets:\n  - {sheet: Kits, title: 'a/b', columns: [{field:"
                                        + " kit}]}\n"))
                .singleElement()
                .asString()
                .contains("parts.yaml:2:26: sheet \"a/b\": is too long or has one of");
    }

    @Test
    void what_is_no_layout_is_refused() {
        assertThat(refusal("sheets: [\n")).singleElement().asString().startsWith("parts.yaml:2");
        assertThat(refusal(""))
                .containsExactly("parts.yaml: is empty; name the sheets and their columns");
        assertThat(refusal("- a\n")).isNotEmpty();
        assertThat(refusal("title: x\n"))
                .containsExactly("parts.yaml:1:1: sheets: has no sheet; name at least one");
        assertThat(refusal("&a [*a, *a]\n")).isNotEmpty();
    }
}
