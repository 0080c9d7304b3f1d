package counterbench.structure.bad.attic;

/** Bad on purpose: a package in no room of the house. */
public final class Homeless {}
