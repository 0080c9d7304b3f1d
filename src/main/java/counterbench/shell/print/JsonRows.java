package counterbench.shell.print;

import java.io.PrintWriter;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.StreamWriteFeature;
import tools.jackson.core.json.JsonFactory;

/**
 * One object with {@code rows}, a row a line. Every value is a text, so that nothing is rounded.
 */
final class JsonRows implements Rows {
    private final PrintWriter out;
    private final List<Column> columns;
    private final JsonGenerator json;

    JsonRows(PrintWriter out, List<Column> columns) {
        this.out = out;
        this.columns = columns;
        this.json =
                JsonFactory.builder()
                        .disable(StreamWriteFeature.AUTO_CLOSE_TARGET)
                        .disable(StreamWriteFeature.AUTO_CLOSE_CONTENT)
                        .build()
                        .createGenerator(ObjectWriteContext.empty(), out);
        json.writeStartObject();
        json.writeArrayPropertyStart("rows");
    }

    @Override
    public void add(@Nullable Object... cells) {
        json.writeRaw('\n');
        json.writeStartObject();
        for (int i = 0; i < cells.length; i++) {
            Object cell = cells[i];
            if (cell == null) {
                json.writeNullProperty(columns.get(i).key());
            } else {
                json.writeStringProperty(columns.get(i).key(), cell.toString());
            }
        }
        json.writeEndObject();
    }

    @Override
    public void close() {
        json.writeRaw('\n');
        json.writeEndArray();
        json.writeEndObject();
        json.close();
        out.println();
        out.flush();
    }
}
