package counterbench.oracle;

import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The paper of one job in perfect order, which a test spoils a little. Rows are written as {@code
 * heading=cell|heading=cell}; times are local to America/Chicago.
 */
final class Paper {

    private static final String PACK =
            """
            campaign: T
            revision: A
            in-force-from: 2026-01-01
            vin-check-digit: false
            attributes: {gear: [auto, manual]}
            kit:
              part: TK
              contents:
                - {part: T1, quantity: 1, matched: true}
                - {part: T2, quantity: 1, matched: true, single-use: true, replaces: [T0]}
                - {part: T3, quantity: 4, single-use: true}
                - {part: T4, quantity: 2, single-use: true, when: {gear: auto}}
                - {part: T5, quantity: 3.5 mL, at-least: 3 mL, shelf-life: true}
                - {part: T6, quantity: 2, on: core}
            procedure:
              - {id: cold, kind: sign}
              - {id: bolts, kind: torque, after: [cold], fasteners: 2, torque: 20 N·m, within: 10 %}
              - {id: hold, kind: wait, after: [bolts], minutes: 1.5}
              - {id: low, kind: reading, after: [hold], unit: V, low: 0.95, high: 1.05}
              - {id: high, kind: reading, after: [low], unit: V, rise-from: low, low: 2.25}
              - {id: free, kind: sign, when: {gear: manual}}
            core:
              part: T1
              drain-minutes: 10
              plugs: 2
              packaging: box
              return-within-days: 30
            claim:
              submit-within-days: 60
              needs: core-shipped
            """;

    private final Map<String, List<Map<String, String>>> rows = new LinkedHashMap<>();
    private final List<Pack> packs = new ArrayList<>();
    private String asOf = "2026-03-20T12:00:00Z";

    Paper() {
        packs.add(PackReader.parse(PACK, Path.of("T.yaml")));
        add("vehicles", "campaign=T|vin=0AAAAAAAAAAAAAAA1|gear=auto");
        add("instruments", "instrument=W|kind=torque wrench|unit=N·m");
        add(
                "calibrations",
                "instrument=W|calibrated_on=2026-01-05|due_on=2026-03-05|uncertainty=0.5");
        add("kits", "kit=K1|kit_part=TK|received_at=2026-03-02 08:00|expires_on=2026-03-05");
        add(
                "jobs",
                "job=J1|campaign=T|vin=0AAAAAAAAAAAAAAA1|opened_at=2026-03-05 08:00"
                        + "|completed_at=2026-03-05 14:00");
        add("issues", "job=J1|at=2026-03-05 08:10|kit=K1");
        uses();
        marks();
        cores();
        add(
                "claims",
                "claim=CL1|job=J1|submitted_on=2026-03-12|labour_amount=200.00|parts_amount=80.50");
        add("credits", "remittance=R1|line=1|amount=280.50|paid_on=2026-03-18|claim=CL1");
    }

    private void uses() {
        add("uses", "job=J1|part=T1|quantity=1|condition=new|at=2026-03-05 09:00");
        add("uses", "job=J1|part=T2|quantity=1|condition=new|at=2026-03-05 09:05");
        add("uses", "job=J1|part=T3|quantity=4|condition=new|at=2026-03-05 09:10");
        add("uses", "job=J1|part=T4|quantity=2|condition=new|at=2026-03-05 09:15");
        add("uses", "job=J1|part=T5|quantity=3.2|condition=new|at=2026-03-05 09:20");
        add("uses", "job=J1|part=T6|quantity=2|condition=on-core|at=2026-03-05 09:25");
    }

    private void marks() {
        add("marks", "job=J1|step=cold|at=2026-03-05 10:00");
        add("marks", "job=J1|step=bolts|at=2026-03-05 10:10|fastener=1|value=20|instrument=W");
        add("marks", "job=J1|step=bolts|at=2026-03-05 10:20|fastener=2|value=20|instrument=W");
        add("marks", "job=J1|step=hold|at=2026-03-05 10:30|minutes=1.5");
        add("marks", "job=J1|step=low|at=2026-03-05 10:40|value=1.00");
        add("marks", "job=J1|step=high|at=2026-03-05 10:50|value=3.25");
    }

    private void cores() {
        add("cores", "core=C1|event=removed|at=2026-03-05 09:00|job=J1|serial=S1");
        add("cores", "core=C1|event=drain-begun|at=2026-03-05 09:10");
        add("cores", "core=C1|event=drain-ended|at=2026-03-05 09:20");
        add("cores", "core=C1|event=plugged|at=2026-03-05 09:20|quantity=2");
        add("cores", "core=C1|event=packed|at=2026-03-06 09:00|packaging=box");
        add("cores", "core=C1|event=added|at=2026-03-06 14:00|shipment=SH1");
        add("cores", "core=C1|event=shipped|at=2026-03-06 15:00|shipment=SH1");
        add("acknowledgements", "shipment=SH1|at=2026-03-15 10:00|event=accepted|core=C1");
    }

    Paper add(String kind, String row) {
        rows.computeIfAbsent(kind, k -> new ArrayList<>()).add(cells(row));
        return this;
    }

    /** Takes out the rows that have all these cells. */
    Paper without(String kind, String cells) {
        rows.get(kind).removeIf(r -> r.entrySet().containsAll(cells(cells).entrySet()));
        return this;
    }

    /** Changes cells of the rows that have all those of the first; an empty cell is taken out. */
    Paper change(String kind, String where, String to) {
        for (Map<String, String> row : rows.get(kind)) {
            if (row.entrySet().containsAll(cells(where).entrySet())) {
                row.putAll(cells(to));
                row.values().removeIf(String::isEmpty);
            }
        }
        return this;
    }

    /** A later revision of the same pack with one text replaced. */
    Paper revision(String from, String text, String other) {
        String later = PACK.replace("revision: A", "revision: B").replace("2026-01-01", from);
        packs.add(PackReader.parse(later.replace(text, other), Path.of("T-B.yaml")));
        return this;
    }

    Paper asOf(String instant) {
        asOf = instant;
        return this;
    }

    Oracle judge() {
        Sheets sheets = Sheets.of("NORTH");
        rows.forEach((kind, all) -> all.forEach(r -> sheets.add(kind, r)));
        OracleSite site = OracleSite.of("NORTH", "America/Chicago", "USD");
        return new Oracle(sheets, packs, site, Instant.parse(asOf));
    }

    /** Each finding as rule, subject, part and step, without the empty ones. */
    List<String> findings() {
        return judge().findings().stream()
                .map(f -> String.join(" ", f.rule(), f.subject(), f.part(), f.step()))
                .map(line -> line.strip().replaceAll(" +", " "))
                .toList();
    }

    String balance(String account, String part) {
        return judge().balances().stream()
                .filter(b -> b.account().equals(account) && b.part().equals(part))
                .map(b -> b.quantity().stripTrailingZeros().toPlainString())
                .findFirst()
                .orElse("0");
    }

    private static Map<String, String> cells(String row) {
        Map<String, String> cells = new LinkedHashMap<>();
        for (String cell : row.split("\\|", -1)) {
            int equals = cell.indexOf('=');
            cells.put(cell.substring(0, equals), cell.substring(equals + 1));
        }
        return cells;
    }
}
