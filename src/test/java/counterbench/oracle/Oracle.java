package counterbench.oracle;

import java.nio.file.Path;
import java.time.Instant;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;

/** A second, naive reading of the rules: whole lists in memory, one pass a rule. */
public final class Oracle {

    private final World world;
    private final Bookkeeper books;
    private final List<Finding> findings = new ArrayList<>();

    Oracle(Sheets sheets, List<Pack> packs, OracleSite site, Instant asOf) {
        Facts facts = new FactReader(sheets, site.clock(), asOf).read(packs);
        world = new World(site, asOf, new Packs(packs), facts);
        books = new Bookkeeper(world).book();
        findings.addAll(new HardwareRules(world, books.ledger).judge());
        findings.addAll(new StepRules(world).judge());
        findings.addAll(new CoreRules(world).judge());
        findings.addAll(new VehicleRules(world).judge());
        findings.addAll(new ClaimRules(world).judge());
        findings.addAll(new GoodsRules(world, books).judge());
        findings.sort(Finding.ORDER);
    }

    /** Reads a folder of sheets and the packs, and judges as of an instant. */
    public static Oracle read(Path sheets, List<Path> packs, OracleSite site, Instant asOf) {
        List<Pack> terms = packs.stream().map(PackReader::read).toList();
        return new Oracle(Sheets.read(sheets, site.name()), terms, site, asOf);
    }

    /** Every finding of every rule, in a stable order. */
    public List<Finding> findings() {
        return List.copyOf(findings);
    }

    /** Consumption by counted part; parts of the campaign without any number are there, too. */
    public List<ConsumptionRow> consumption(String campaign, YearMonth month) {
        return reconciliation(campaign, month).consumption();
    }

    /** Goods of the whole site, for the parts that the campaign's packs put into kits. */
    public List<GoodsRow> goods(String campaign, YearMonth month) {
        return reconciliation(campaign, month).goods();
    }

    /** Every account and part that is not zero, SUPPLIER and COUNT among them. */
    public List<Balance> balances() {
        return books.ledger.accounts().stream()
                .flatMap(
                        account ->
                                books.ledger.held(account).entrySet().stream()
                                        .filter(e -> e.getValue().signum() != 0)
                                        .map(e -> new Balance(account, e.getKey(), e.getValue())))
                .toList();
    }

    private Reconciliation reconciliation(String campaign, YearMonth month) {
        return new Reconciliation(world, books, findings, campaign, month);
    }
}
