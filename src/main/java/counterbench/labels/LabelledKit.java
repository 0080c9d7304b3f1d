package counterbench.labels;

import java.util.List;

/**
 * A kit.
 *
 * @param site the short name of the site that has it
 */
public record LabelledKit(String site, String serial, Goods goods) implements Labelled {
    @Override
    public Label label() {
        return new Label(
                "kit " + serial,
                new LabelLines()
                        .add("part", goods.part())
                        .add("lot", goods.lot())
                        .add("use by", goods.expiresOn())
                        .add("site", site)
                        .all(),
                List.of(),
                LabelContent.ofKit(serial, goods));
    }
}
