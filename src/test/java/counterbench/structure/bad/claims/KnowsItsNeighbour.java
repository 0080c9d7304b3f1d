package counterbench.structure.bad.claims;

import counterbench.structure.bad.cores.Beside;

/** Bad on purpose: a room that knows the one beside it. */
public final class KnowsItsNeighbour {
    public Beside beside() {
        return new Beside();
    }
}
