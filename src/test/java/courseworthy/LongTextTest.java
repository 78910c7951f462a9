package courseworthy;

import static org.assertj.core.api.Assertions.assertThatCode;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * No pattern that text is matched with runs out of stack on a long one: {@link Pattern} goes one call deeper for each turn of a repeated group.
 */
class LongTextTest {

    private static final int TURNS = 10_000;
    private static final List<String> PIECES = List.of("a", "a-", "A", "Z ", "1", "1.", "1,", "0-", "-", "_", " ", "\t", "\n", ":", "a:b,", "a, ", "(", ")",
            "{a}", "x1", "34x50 ", "\\", "\"", "/", "é", "\u4e2d", "/a", "..", "+1");

    static Stream<Field> patterns() {
        return new ClassFileImporter().withImportOption(new ImportOption.DoNotIncludeTests()).importPackages("courseworthy").stream()
                .map(JavaClass::getFields).flatMap(fields -> fields.stream()).filter(field -> field.getRawType().isEquivalentTo(Pattern.class))
                .map(JavaField::reflect).filter(field -> Modifier.isStatic(field.getModifiers()));
    }

    @ParameterizedTest
    @MethodSource("patterns")
    void aPatternTakesLongText(Field field) throws IllegalAccessException {
        field.setAccessible(true);
        Pattern pattern = (Pattern) field.get(null);
        for (String piece : PIECES) {
            for (String text : List.of(piece.repeat(TURNS), piece.repeat(TURNS) + "\u0001", "1" + piece.repeat(TURNS), "a" + piece.repeat(TURNS))) {
                assertThatCode(() -> pattern.matcher(text).matches()).as("%s on many \"%s\"", pattern, piece).doesNotThrowAnyException();
            }
        }
    }
}
