package counterbench.shell;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

/**
 * Writes UTF-8 to one of the process's streams and knows why writing failed: a reader who has seen
 * enough ({@code … | head}) is no reason for a message, a full disk is.
 */
final class ResultWriter extends PrintWriter {
    private final Outlet outlet;

    ResultWriter(FileDescriptor to) {
        this(new Outlet(new FileOutputStream(to)));
    }

    private ResultWriter(Outlet outlet) {
        super(new OutputStreamWriter(outlet, StandardCharsets.UTF_8));
        this.outlet = outlet;
    }

    /** Whether whoever read the stream went away. */
    boolean isReaderGone() {
        return outlet.readerGone;
    }

    private static final class Outlet extends FilterOutputStream {
        private volatile boolean readerGone;

        Outlet(OutputStream to) {
            super(to);
        }

        @Override
        public void write(byte[] bytes, int from, int length) throws IOException {
            try {
                out.write(bytes, from, length);
            } catch (IOException e) {
                String why = String.valueOf(e.getMessage()).toLowerCase(Locale.ROOT);
                readerGone = why.contains("pipe");
                throw e;
            }
        }
    }
}
