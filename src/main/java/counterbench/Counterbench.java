package counterbench;

/** Starts the program: arguments in, exit code out. */
public final class Counterbench {
    private Counterbench() {}

    /** Runs one command, or the shell where no words are given. */
    public static void main(String[] args) {
        System.out.println("counterbench");
    }
}
