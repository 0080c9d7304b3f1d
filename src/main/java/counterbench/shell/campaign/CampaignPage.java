package counterbench.shell.campaign;

import counterbench.campaign.ClaimTerms;
import counterbench.campaign.CoreTerms;
import counterbench.campaign.KitTerms;
import counterbench.campaign.Pack;
import counterbench.campaign.Step;
import counterbench.campaign.StepText;
import java.util.ArrayList;
import java.util.List;

/** A pack as lines for people. */
final class CampaignPage {
    private final Pack pack;
    private final List<String> lines = new ArrayList<>();

    private CampaignPage(Pack pack) {
        this.pack = pack;
    }

    static List<String> of(Pack pack) {
        CampaignPage page = new CampaignPage(pack);
        page.head();
        page.cautions();
        pack.kits().forEach(page::kit);
        page.procedure();
        pack.cores().forEach(page::core);
        page.claim();
        return List.copyOf(page.lines);
    }

    private void head() {
        lines.add(Told.name(pack));
        lines.add(pack.title());
        pack.attributes()
                .forEach((name, answers) -> lines.add(name + ": " + String.join(" or ", answers)));
        if (!pack.vinCheckDigit()) {
            lines.add("VINs have no check digit");
        }
    }

    private void heading(String text) {
        lines.add("");
        lines.add(text);
    }

    private void cautions() {
        heading("Cautions");
        pack.cautions().forEach(caution -> lines.add("  " + caution));
        lines.add("  The maker's own procedure, local codes and licensed practice come first.");
    }

    private void kit(KitTerms kit) {
        heading(
                "Kit "
                        + kit.part()
                        + ", "
                        + kit.quantity()
                        + " a job"
                        + TermsText.when(kit.when()));
        kit.contents().forEach(line -> lines.add("  " + TermsText.of(line)));
    }

    private void procedure() {
        heading("Procedure");
        int width = pack.procedure().stream().mapToInt(s -> s.id().length()).max().orElse(0);
        for (Step step : pack.procedure()) {
            String asked = StepText.asked(step);
            String id = step.id() + " ".repeat(width - step.id().length());
            lines.add("  " + id + "  " + step.what() + TermsText.when(step.when()));
            if (!asked.isEmpty()) {
                lines.add("  " + " ".repeat(width) + "  " + asked);
            }
        }
        lines.add("  Values in brackets are rounded; the first ones count.");
    }

    private void core(CoreTerms core) {
        heading(
                "Core "
                        + core.part()
                        + ", "
                        + core.quantity()
                        + " a job"
                        + TermsText.when(core.when()));
        TermsText.of(core).forEach(term -> lines.add("  " + term));
    }

    private void claim() {
        ClaimTerms claim = pack.claim();
        if (claim == null) {
            return;
        }
        heading("Claim");
        TermsText.amounts(claim).forEach(term -> lines.add("  " + term));
        TermsText.limit(claim).ifPresent(term -> lines.add("  " + term));
        lines.add("  " + TermsText.needs(claim));
    }
}
