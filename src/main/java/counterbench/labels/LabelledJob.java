package counterbench.labels;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** A job. */
public record LabelledJob(
        String site, String job, String campaign, String vin, @Nullable String workOrder)
        implements Labelled {
    @Override
    public Label label() {
        return new Label(
                "job " + job,
                new LabelLines()
                        .add("campaign", campaign)
                        .add("VIN", vin)
                        .add("work order", workOrder)
                        .add("site", site)
                        .all(),
                List.of(),
                LabelContent.ofJob(job));
    }
}
