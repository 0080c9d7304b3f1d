package counterbench.labels.store;

import counterbench.campaign.Packs;
import counterbench.campaign.store.PackBook;
import counterbench.db.Store;
import counterbench.facts.FactKind;
import counterbench.facts.FactRow;
import counterbench.labels.Goods;
import counterbench.labels.LabelledCore;
import counterbench.labels.LabelledJob;
import counterbench.labels.LabelledKit;
import counterbench.labels.LabelledPart;
import counterbench.labels.LabelledShipment;
import counterbench.labels.ShippingNumbers;
import counterbench.labels.gs1.CompanyPrefix;
import counterbench.labels.gs1.Sscc;
import counterbench.shared.Site;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.SortedSet;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Everything of a site that a label can be put on, found by its name. */
public final class LabelBook {
    private final Store store;
    private final Site site;

    public LabelBook(Store store, Site site) {
        this.store = store;
        this.site = site;
    }

    private <T> T read(Function<PostedRows, T> work) {
        return store.read(sql -> work.apply(new PostedRows(sql, site)));
    }

    /** The names of all things of a kind that bear one. */
    public SortedSet<String> names(FactKind kind) {
        return read(rows -> rows.texts(kind, kind == FactKind.CORES ? "core" : kind.key().get(0)));
    }

    /** A kit by its serial. */
    public Optional<LabelledKit> kit(String serial) {
        return read(rows -> rows.keyed(FactKind.KITS, serial))
                .map(
                        row ->
                                new LabelledKit(
                                        site.site(),
                                        serial,
                                        Goods.of(
                                                said(row, "kit_part"),
                                                row.text("lot"),
                                                row.date("expires_on"))));
    }

    /** A job by its name. */
    public Optional<LabelledJob> job(String job) {
        return read(rows -> rows.keyed(FactKind.JOBS, job))
                .map(
                        row ->
                                new LabelledJob(
                                        site.site(),
                                        job,
                                        said(row, "campaign"),
                                        said(row, "vin"),
                                        row.text("work_order")));
    }

    /** A core by its tag, once it was removed. */
    public Optional<LabelledCore> core(String tag) {
        return read(rows -> rows.ofCore(tag)).stream()
                .filter(row -> said(row, "event").equals("removed"))
                .findFirst()
                .map(
                        row ->
                                new LabelledCore(
                                        site.site(),
                                        tag,
                                        row.text("job"),
                                        row.text("serial"),
                                        row.text("part")));
    }

    /** A shipment by its name. */
    public Optional<LabelledShipment> shipment(String shipment) {
        return read(rows -> rows.keyed(FactKind.SHIPMENTS, shipment))
                .map(
                        row ->
                                new LabelledShipment(
                                        site.site(),
                                        shipment,
                                        said(row, "carrier"),
                                        said(row, "tracking"),
                                        sscc(shipment)));
    }

    private @Nullable Sscc sscc(String shipment) {
        return numbers().map(n -> n.of(places().indexOf(shipment))).orElse(null);
    }

    private Optional<ShippingNumbers> numbers() {
        return Optional.ofNullable(site.companyPrefix())
                .map(prefix -> new ShippingNumbers(new CompanyPrefix(prefix), site.no()));
    }

    private List<String> places() {
        return store.read(sql -> ShipmentPlaces.all(sql, site));
    }

    /** The shipment that bears a number; empty if none of the site's does. */
    public Optional<String> shipment(Sscc sscc) {
        List<String> places = places();
        return numbers()
                .flatMap(n -> n.placeOf(sscc))
                .filter(place -> place < places.size())
                .map(place -> places.get(place.intValue()));
    }

    /** Every part that packs, lists or receipts know, with its name where it has one. */
    public Map<String, String> parts() {
        Packs packs = new PackBook(store).all();
        return read(rows -> PartNames.of(packs, rows));
    }

    /** Some of a part; the last day of a lot is that of its receipt, unless one is given. */
    public Optional<LabelledPart> part(
            String part, @Nullable String lot, @Nullable LocalDate expiresOn) {
        LocalDate last = expiresOn != null || lot == null ? expiresOn : lastDay(part, lot);
        return Optional.ofNullable(parts().get(part))
                .map(
                        name ->
                                new LabelledPart(
                                        site.site(),
                                        name.isEmpty() ? null : name,
                                        Goods.of(part, lot, last)));
    }

    private @Nullable LocalDate lastDay(String part, String lot) {
        return read(rows -> rows.with(FactKind.RECEIPTS, "part", part)).stream()
                .filter(row -> lot.equals(row.text("lot")))
                .flatMap(row -> Optional.ofNullable(row.date("expires_on")).stream())
                .findFirst()
                .orElse(null);
    }

    private static String said(FactRow row, String heading) {
        return Objects.requireNonNull(row.text(heading), heading);
    }
}
