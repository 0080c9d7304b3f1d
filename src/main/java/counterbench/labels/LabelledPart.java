package counterbench.labels;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Some of a part.
 *
 * @param name what people call it, where that is known
 * @param goods the part's number, and the lot and last day of this much of it
 */
public record LabelledPart(String site, @Nullable String name, Goods goods) implements Labelled {
    @Override
    public Label label() {
        return new Label(
                goods.partNumber().orElseThrow(),
                new LabelLines()
                        .addAlone(name)
                        .add("lot", goods.lot())
                        .add("use by", goods.expiresOn())
                        .add("site", site)
                        .all(),
                List.of(),
                LabelContent.ofPart(goods));
    }
}
