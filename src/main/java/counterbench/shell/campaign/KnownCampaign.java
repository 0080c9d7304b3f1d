package counterbench.shell.campaign;

import counterbench.campaign.Packs;
import counterbench.shared.NearMatch;
import counterbench.shared.Refused;
import java.util.Set;

/** Campaigns that a person may name. */
public final class KnownCampaign {
    private KnownCampaign() {}

    /**
     * The campaign as it was named.
     *
     * @throws Refused if no pack of it is loaded
     */
    public static String of(String campaign, Packs packs) {
        if (packs.revisions(campaign).isEmpty()) {
            throw refusal(campaign, packs);
        }
        return campaign;
    }

    static Refused refusal(String campaign, Packs packs) {
        Set<String> known = packs.campaigns();
        return new Refused(
                "campaign \"" + campaign + "\"",
                "no pack of it is loaded",
                NearMatch.of(campaign, known)
                        .map(near -> "did you mean " + near + "?")
                        .orElse(
                                known.isEmpty()
                                        ? "load one with campaign load"
                                        : "there are " + String.join(", ", known)));
    }
}
