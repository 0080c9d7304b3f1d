package counterbench.bench;

import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Paper for a number of jobs, all alike: 1 kit, 6 uses, 9 marks and 6 core events each; every tenth
 * job has something to find.
 */
final class BenchPaper {
    static final String PACK =
            """
            campaign: BN-26-001
            title: Bench unit
            revision: A
            in-force-from: 2026-01-01
            vin-check-digit: false
            kit:
              part: BN-100-K
              contents:
                - {part: BN-101, name: Unit, quantity: 1, matched: true}
                - {part: BN-102, name: Bolt, quantity: 1, matched: true, single-use: true}
                - {part: BN-103, name: Washer, quantity: 2, single-use: true}
                - {part: BN-104, name: Clip, quantity: 1}
                - {part: BN-105, name: Sealant, quantity: 3 mL, at-least: 2 mL, shelf-life: true}
                - {part: BN-106, name: Plug, quantity: 2, on: core}
            procedure:
              - {id: safe, do: Read the cautions, kind: safety}
              - {id: cold, do: Engine cold, kind: sign, after: [safe]}
              - {id: clamp, do: Tighten the clamp, kind: torque, after: [cold], fasteners: 4, torque: 20 N·m, within: 2 N·m}
              - {id: bolt, do: Tighten the bolt, kind: torque, after: [clamp], torque: 30 N·m, within: 3 N·m}
              - {id: purge, do: Purge, kind: wait, after: [bolt], minutes: 0.5}
              - {id: idle, do: Low idle, kind: reading, after: [purge], unit: rpm, low: 600, high: 700}
            core:
              part: BN-101
              drain-minutes: 15
              plugs: 2
              packaging: replacement
              return-within-days: 30
              charge: 100.00
            claim:
              labour-operation: 10-0001
              hours: 1.5
              submit-within-days: 60
              needs: none
            """;

    private static final Instant FIRST = Instant.parse("2026-01-05T14:00:00Z");
    private static final Duration APART = Duration.ofMinutes(3);

    private final Map<String, BufferedWriter> sheets = new LinkedHashMap<>();
    private final Path folder;
    private long rows;

    private BenchPaper(Path folder) {
        this.folder = folder;
    }

    /** Writes the paper of the jobs of those numbers; gives the number of rows. */
    static long write(Path folder, int from, int to) throws IOException {
        BenchPaper paper = new BenchPaper(Files.createDirectories(folder));
        if (from == 1) {
            paper.row("people", "name,roles", "Bo,technician");
            paper.row("instruments", "instrument,kind,unit", "TW-1,torque wrench,N·m");
            paper.row(
                    "calibrations",
                    "instrument,calibrated_on,due_on",
                    "TW-1,2026-01-01,2030-01-01");
        }
        for (int job = from; job <= to; job++) {
            paper.job(job, FIRST.plus(APART.multipliedBy(job)));
        }
        for (BufferedWriter sheet : paper.sheets.values()) {
            sheet.close();
        }
        return paper.rows;
    }

    private void row(String kind, String headings, String cells) throws IOException {
        BufferedWriter sheet = sheets.get(kind);
        if (sheet == null) {
            sheet = Files.newBufferedWriter(folder.resolve(kind + ".csv"));
            sheets.put(kind, sheet);
            sheet.write(headings + "\r\n");
        }
        sheet.write(cells + "\r\n");
        rows++;
    }

    private void job(int number, Instant at) throws IOException {
        boolean odd = number % 10 == 0;
        String job = "J-" + number;
        String kit = "K-" + number;
        String vin = "0BENCH%011d".formatted(number);
        row(
                "kits",
                "kit,kit_part,received_at,expires_on",
                kit + ",BN-100-K," + at.minus(Duration.ofDays(3)) + ",2030-01-01");
        row(
                "jobs",
                "job,campaign,vin,opened_at,technician,completed_at",
                job + ",BN-26-001," + vin + "," + at + ",Bo," + at.plus(Duration.ofHours(3)));
        row("issues", "job,at,kit", job + "," + at.plusSeconds(60) + "," + kit);
        uses(job, at.plusSeconds(1800), odd);
        marks(job, at.plusSeconds(3600), odd);
        core(number, job, at.plusSeconds(7200), odd);
    }

    private void uses(String job, Instant at, boolean odd) throws IOException {
        use(job, "BN-101,1,new", at);
        use(job, "BN-102,1," + (odd ? "reused" : "new"), at);
        use(job, "BN-103,2,new", at);
        use(job, "BN-104,1,new", at);
        use(job, "BN-105,2.5,new", at);
        use(job, "BN-106,2,on-core", at.plusSeconds(5400));
    }

    private void use(String job, String what, Instant at) throws IOException {
        row("uses", "job,part,quantity,condition,at", job + "," + what + "," + at);
    }

    private void marks(String job, Instant at, boolean odd) throws IOException {
        mark(job, "safe,,,,", at);
        mark(job, "cold,,,,", at.plusSeconds(60));
        for (int fastener = 1; fastener <= 4; fastener++) {
            mark(job, "clamp,20." + fastener + "," + fastener + ",,TW-1", at.plusSeconds(120));
        }
        mark(job, "bolt," + (odd ? "35" : "30") + ",,,TW-1", at.plusSeconds(240));
        mark(job, "purge,,,0.6,", at.plusSeconds(360));
        mark(job, "idle,650,,,", at.plusSeconds(480));
    }

    private void mark(String job, String what, Instant at) throws IOException {
        row("marks", "job,step,value,fastener,minutes,instrument,at", job + "," + what + "," + at);
    }

    private void core(int number, String job, Instant at, boolean odd) throws IOException {
        String core = "C-" + number;
        event(core, "removed," + job + ",S-" + number + ",BN-101,,", at);
        event(core, "drain-begun,,,,,", at.plusSeconds(60));
        event(core, "drain-ended,,,,,", at.plusSeconds(odd ? 600 : 1200));
        event(core, "plugged,,,,2,", at.plusSeconds(1800));
        event(core, "packed,,,,,replacement", at.plusSeconds(2400));
        event(core, "shipped,,,,,", at.plus(Duration.ofDays(2)));
    }

    private void event(String core, String what, Instant at) throws IOException {
        row(
                "cores",
                "core,event,job,serial,part,quantity,packaging,at",
                core + "," + what + "," + at);
    }
}
