package counterbench.acts;

import counterbench.shared.Quantity;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * What a campaign still needs at a site, beside what is there and what is on order.
 *
 * @param openJobs jobs of the site that have not ended
 * @param jobsWithoutKit those of them that still need a kit
 */
public record CampaignNeed(
        String campaign,
        Vehicles vehicles,
        int openJobs,
        int jobsWithoutKit,
        List<OfKit> kits,
        List<OfPart> parts) {
    public CampaignNeed {
        Objects.requireNonNull(campaign, "campaign");
        Objects.requireNonNull(vehicles, "vehicles");
        kits = List.copyOf(kits);
        parts = List.copyOf(parts);
    }

    /**
     * The vehicles of the campaign's list, at whatever site.
     *
     * @param listed all; 0 where the campaign has no list
     * @param done completed, or found not to need it
     * @param cannotCome last said to be unreachable, scrapped or exported
     */
    public record Vehicles(int listed, int done, int cannotCome) {
        /** Those that may still come. */
        public int open() {
            return listed - done - cannotCome;
        }
    }

    /**
     * One kit of the campaign.
     *
     * @param perJob how many a job needs
     * @param vehicles open vehicles that need it, as far as the list tells
     * @param wanted how many the open jobs still need
     * @param inDate on the shelf and in date
     * @param expired on the shelf and expired
     * @param expectedOn when the first ordered ones should come, if an order says so
     */
    public record OfKit(
            String part,
            int perJob,
            int vehicles,
            int wanted,
            int inDate,
            int expired,
            Quantity onOrder,
            @Nullable LocalDate expectedOn) {
        /** For how many jobs those in date last. */
        public int lasts() {
            return inDate / perJob;
        }
    }

    /**
     * A part that open jobs need loose, since their kits do not bring it.
     *
     * @param inStore what the store has, with the older numbers that count as it
     * @param jobs those jobs
     */
    public record OfPart(
            String part,
            Quantity needed,
            Quantity inStore,
            Quantity onOrder,
            @Nullable LocalDate expectedOn,
            List<String> jobs) {
        public OfPart {
            jobs = List.copyOf(jobs);
        }
    }
}
