package counterbench.home;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import counterbench.shared.StoreUnusable;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class HomeTest {
    @TempDir Path folder;

    private Home home(Map<String, String> variables) {
        return Home.of(new Surroundings(variables, folder));
    }

    @Test
    void it_lies_in_the_users_home_unless_a_variable_says_otherwise() {
        assertThat(home(Map.of()).location()).isEqualTo(folder.resolve(".counterbench"));
        assertThat(home(Map.of("COUNTERBENCH_HOME", " ")).location())
                .isEqualTo(folder.resolve(".counterbench"));
        Path other = folder.resolve("a b");
        assertThat(home(Map.of("COUNTERBENCH_HOME", other.toString())).location()).isEqualTo(other);
    }

    @Test
    void only_its_owner_can_look_into_it() throws Exception {
        Home home = home(Map.of());
        assertThat(home.location()).doesNotExist();
        Path file = home.file("history");
        assertThat(permissions(home.folder())).isEqualTo("rwx------");
        assertThat(permissions(file)).isEqualTo("rw-------");
        Files.writeString(file, "kept");
        assertThat(home.file("history")).hasContent("kept");
    }

    private static String permissions(Path file) throws Exception {
        return PosixFilePermissions.toString(Files.getPosixFilePermissions(file));
    }

    @Test
    void a_file_in_its_place_is_told() throws Exception {
        Files.writeString(folder.resolve(".counterbench"), "a file");
        assertThatThrownBy(() -> home(Map.of()).folder())
                .isInstanceOf(StoreUnusable.class)
                .hasMessageContaining("home folder")
                .hasMessageContaining("name another folder in COUNTERBENCH_HOME");
    }
}
