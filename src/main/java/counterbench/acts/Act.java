package counterbench.acts;

import counterbench.facts.FactKind;
import counterbench.judgement.Finding;

/** One act of a person, such as issuing a kit. */
public interface Act {
    /** The kind of fact that it makes foremost; whoever may import such rows may do it. */
    FactKind makes();

    /** Whether a finding is told after the act even if it stood before, such as a reading's. */
    default boolean tellsAgain(Finding finding) {
        return false;
    }

    /** What it names, so that it can be looked up before it is decided. */
    Named named();

    /**
     * The facts to record.
     *
     * @throws counterbench.shared.Refused if it cannot be
     */
    Decision decide(Situation situation);
}
