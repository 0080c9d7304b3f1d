package counterbench.structure.bad.review;

/** Bad on purpose: nothing in itself; others know it who must not. */
public final class Above {}
