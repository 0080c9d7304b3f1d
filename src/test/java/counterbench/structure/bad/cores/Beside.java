package counterbench.structure.bad.cores;

/** Bad on purpose: nothing in itself; others know it who must not. */
public final class Beside {}
