package counterbench.structure.bad.shell;

/** Bad on purpose: a command that prints past its invocation. */
public final class Prints {
    public void print(String claim) {
        System.out.println(claim);
    }
}
