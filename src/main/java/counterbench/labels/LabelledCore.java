package counterbench.labels;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A removed unit.
 *
 * @param job the job that it was removed on
 * @param serial the number on its plate
 */
public record LabelledCore(
        String site,
        String tag,
        @Nullable String job,
        @Nullable String serial,
        @Nullable String part)
        implements Labelled {
    private static final List<String> CAUTIONS =
            List.of(
                    "Holds fuel or fluid. Drain and plug before packing.",
                    "The maker's procedure comes first.");

    @Override
    public Label label() {
        return new Label(
                "core " + tag,
                new LabelLines()
                        .add("job", job)
                        .add("serial", serial)
                        .add("part", part)
                        .add("site", site)
                        .all(),
                CAUTIONS,
                LabelContent.ofCore(tag));
    }
}
