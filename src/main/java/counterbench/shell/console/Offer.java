package counterbench.shell.console;

import org.jline.reader.Candidate;

/**
 * One thing that completion offers.
 *
 * @param meaning what it is, in a few words; may be empty
 */
record Offer(String word, String meaning) {
    Candidate toCandidate() {
        String description = meaning.isEmpty() ? null : meaning;
        return new Candidate(word, word, null, description, null, null, true);
    }
}
