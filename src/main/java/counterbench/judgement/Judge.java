package counterbench.judgement;

/**
 * One rule's way of judging the facts that concern it. Pure: the same facts give the same findings.
 *
 * @param <F> the facts that it judges
 */
public interface Judge<F> {
    /** The rule that it judges by. */
    Rule rule();

    /** Judges and writes what it finds. */
    void judge(F facts, Findings findings);
}
