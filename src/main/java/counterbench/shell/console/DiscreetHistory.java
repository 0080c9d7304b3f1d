package counterbench.shell.console;

import java.time.Instant;
import java.util.regex.Pattern;
import org.jline.reader.impl.history.DefaultHistory;

/**
 * The lines that a person typed, without those into which a secret may have slipped: a PIN is
 * always asked for, but somebody may type it behind the command all the same.
 */
final class DiscreetHistory extends DefaultHistory {
    private static final Pattern SECRET =
            Pattern.compile(
                    "(?i)\\bsign-?in\\b|\\bsetup\\b|\\bperson\\s+(?:add|pin)\\b|\\bpin\\b|password");

    @Override
    public void add(Instant time, String line) {
        if (!SECRET.matcher(line).find()) {
            super.add(time, line);
        }
    }
}
