package counterbench.acts.scan;

import counterbench.acts.Act;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What is to be done about a scan.
 *
 * @param deed what to do
 * @param say what to tell the person besides
 * @param mind what is kept in mind once that is done
 */
public record Reply(Deed deed, List<String> say, Mind mind) {
    public Reply {
        say = List.copyOf(say);
    }

    /** What is done. */
    public sealed interface Deed {}

    /** Nothing is recorded. */
    public record Tell() implements Deed {}

    /**
     * An act is recorded.
     *
     * @param told how it is acknowledged
     */
    public record Perform(Act act, String told) implements Deed {}

    /** The person's last act on the job is taken back. */
    public record Undo(@Nullable String reason) implements Deed {}

    /** How the job stands is told at length. */
    public record Where() implements Deed {}

    /** The words of the loop are told. */
    public record Help() implements Deed {}

    /** The loop ends. */
    public record Leave() implements Deed {}

    static Reply tell(Mind mind, String... say) {
        return new Reply(new Tell(), List.of(say), mind);
    }

    static Reply record(Act act, String told, Mind mind) {
        return new Reply(new Perform(act, told), List.of(), mind);
    }
}
