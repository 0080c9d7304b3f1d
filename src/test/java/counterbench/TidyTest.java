package counterbench;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.structure.SourceTree;
import counterbench.structure.SourceTree.Source;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** How the files of the project are written; each check says what to do instead. */
class TidyTest {
    private static final int LONGEST_FILE = 350;
    private static final int LONGEST_METHOD = 40;
    private static final Pattern TEST_METHOD =
            Pattern.compile(
                    "@(?:Test|ParameterizedTest|RepeatedTest|TestFactory)\\b[\\s\\S]*?\\bvoid (\\w+)\\(");
    private static final Pattern TYPE = Pattern.compile("\\b(record|class|enum|interface) \\w+");
    private static final Pattern SENTENCE = Pattern.compile("[a-z]\\w*(_\\w+){2,}");

    private static List<String> places(List<Source> sources, String pattern) {
        Pattern compiled = Pattern.compile(pattern);
        return sources.stream().flatMap(s -> s.places(compiled)).toList();
    }

    private static List<Source> tests() {
        return SourceTree.java("src/test/java");
    }

    private static List<Source> code() {
        return SourceTree.java("src/main/java");
    }

    @Test
    void no_unfinished_work_is_left_in_the_files() {
        assertThat(places(SourceTree.all(), "\\b(TO[D]O|FIX[M]E)\\b"))
                .as("finish it, or leave it out")
                .isEmpty();
    }

    @Test
    void no_file_names_a_folder_of_somebodys_machine() {
        assertThat(places(SourceTree.all(), "(^|[^\\w.])/(work|root|tmp|Users|home/\\w+)/"))
                .as("use a temporary folder, or COUNTERBENCH_HOME")
                .isEmpty();
    }

    @Test
    void no_file_of_code_is_longer_than_can_be_read_at_once() {
        assertThat(Stream.concat(code().stream(), tests().stream()))
                .as("a file says one thing: split it by what it says")
                .filteredOn(s -> s.lines().size() > LONGEST_FILE)
                .extracting(Source::path)
                .isEmpty();
    }

    @Test
    void no_method_is_longer_than_forty_lines() {
        assertThat(code().stream().flatMap(TidyTest::longMethods))
                .as("name the parts of what it does")
                .isEmpty();
    }

    /** The formatter puts heads and ends of a class's methods four blanks from the margin. */
    private static Stream<String> longMethods(Source source) {
        List<String> found = new ArrayList<>();
        List<String> lines = source.lines();
        int opened = Integer.MAX_VALUE;
        boolean inHead = false;
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i);
            if (line.equals("    }") && i - opened > LONGEST_METHOD + 1) {
                found.add(source.path() + ":" + opened);
            }
            if (line.matches(" {4}\\S.*")) {
                opened = Integer.MAX_VALUE;
                inHead = !TYPE.matcher(line).find();
            }
            if (inHead && line.endsWith("{")) {
                opened = i;
                inHead = false;
            }
        }
        return found.stream();
    }

    @Test
    void names_say_what_a_thing_is_and_not_that_it_helps() {
        assertThat(Stream.concat(code().stream(), tests().stream()).map(Source::name))
                .as("name it after what it knows or does")
                .noneMatch(name -> name.matches(".*(Util|Utils|Helper|Manager|Impl)"));
    }

    @Test
    void every_package_says_what_it_is_for_and_that_it_marks_nulls() {
        List<Source> sources = code();
        assertThat(sources.stream().map(s -> s.path().getParent()).distinct())
                .as("write a package-info.java with a sentence and @NullMarked")
                .allMatch(folder -> Files.exists(folder.resolve("package-info.java")));
        assertThat(sources)
                .filteredOn(s -> s.name().equals("package-info"))
                .allMatch(s -> s.text().contains("/**") && s.text().contains("@NullMarked"));
    }

    @Test
    void classes_with_tests_end_in_the_one_word_that_surefire_and_we_look_for() {
        assertThat(tests())
                .as("a class of another name never runs, or runs by chance")
                .filteredOn(s -> TEST_METHOD.matcher(s.text()).find())
                .allMatch(s -> s.name().endsWith("Test"));
    }

    @Test
    void names_of_tests_read_as_sentences() {
        assertThat(tests().stream().flatMap(TidyTest::testNames))
                .as("say what holds: a_kit_cannot_be_issued_twice")
                .hasSizeGreaterThan(100)
                .allMatch(name -> SENTENCE.matcher(name).matches());
        assertThat(places(tests(), "@Display[N]ame")).as("the name is the sentence").isEmpty();
    }

    private static Stream<String> testNames(Source source) {
        Matcher matcher = TEST_METHOD.matcher(source.text());
        return matcher.results().map(r -> r.group(1));
    }

    @Test
    void no_test_waits_by_the_clock_or_is_switched_off() {
        assertThat(places(tests(), "Thread[.]sleep|@Dis[a]bled|@Ign[o]re\\b"))
                .as("wait for what you wait for (Awaitility); mend what does not pass")
                .isEmpty();
    }
}
