package counterbench.shell.demo;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.springframework.core.io.Resource;
import org.springframework.core.io.support.PathMatchingResourcePatternResolver;

/** The paper of the invented garage, as it lies in the program. */
final class DemoPaper {
    private static final String ROOT = "counterbench/demo-data/";

    private DemoPaper() {}

    /** Writes all of it into a folder, where it can be read and changed. */
    static void copy(Path folder) throws IOException {
        Resource[] all =
                new PathMatchingResourcePatternResolver(DemoPaper.class.getClassLoader())
                        .getResources("classpath:" + ROOT + "**/*.*");
        for (Resource resource : all) {
            String place = resource.getURL().toString();
            copy(
                    resource,
                    folder.resolve(place.substring(place.lastIndexOf(ROOT) + ROOT.length())));
        }
    }

    private static void copy(Resource resource, Path file) throws IOException {
        Files.createDirectories(file.getParent());
        try (InputStream text = resource.getInputStream()) {
            Files.copy(text, file);
        }
    }
}
