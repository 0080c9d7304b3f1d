package counterbench.shared.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class UnitsTest {
    private static final BigDecimal ONE = BigDecimal.ONE;

    /** Figures: NIST SP 811 (2008), Appendix B.8, to its seven digits. */
    @ParameterizedTest
    @CsvSource({
        "lbf·ft, N·m, 1.355818",
        "lbf·in, N·m, 0.1129848",
        "kgf·m, N·m, 9.80665",
        "kgf·cm, N·m, 0.0980665",
        "ft·lbf, J, 1.355818",
        "psi, kPa, 6.894757",
        "bar, kPa, 100",
        "fl oz, mL, 29.57353",
        "oz, g, 28.34952",
    })
    void a_factor_rounded_to_seven_digits_is_the_published_one(
            String from, String to, String published) {
        assertThat(Units.of(from).convert(ONE, Units.of(to), 7)).isEqualByComparingTo(published);
    }

    /** Exact values: NIST SP 811 and Handbook 44, Appendix C, from the definitions. */
    @ParameterizedTest
    @CsvSource({
        "lbf·ft, 1.3558179483314004",
        "lbf·in, 0.1129848290276167",
        "kgf·m, 9.80665",
        "fl oz, 29.5735295625",
        "oz, 28.349523125",
    })
    void a_factor_is_exact(String unit, String exact) {
        assertThat(Units.of(unit).toBase(ONE)).isEqualByComparingTo(exact);
    }

    /** The definitions: lbf = 0.45359237 kg × 9.80665 m/s², in = 0.0254 m. */
    @Test
    void psi_and_kilopascal_are_newtons_per_square_inch() {
        BigDecimal poundForce = new BigDecimal("0.45359237").multiply(new BigDecimal("9.80665"));
        BigDecimal squareInch = new BigDecimal("0.0254").pow(2);
        assertThat(Units.of("psi").toBase(ONE)).isEqualByComparingTo(poundForce);
        assertThat(Units.of("kPa").toBase(ONE))
                .isEqualByComparingTo(squareInch.multiply(new BigDecimal(1000)));
        assertThat(Units.of("psi").convert(ONE, Units.of("kPa"), 16))
                .isEqualByComparingTo("6.894757293168361");
    }

    /** Check points: recomputed with an independent program from the exact factors. */
    @ParameterizedTest
    @CsvSource({
        "25, lbf·ft, N·m, 33.895448708",
        "89, lbf·ft, N·m, 120.667797401",
        "100, N·m, lbf·ft, 73.756214928",
        "8, N·m, lbf·in, 70.805966331",
        "-40, °F, °C, -40",
        "-40, °C, °F, -40",
        "68, °F, °C, 20",
        "100, °C, °F, 212",
    })
    void check_points_convert(BigDecimal value, String from, String to, BigDecimal expected) {
        int digits = expected.precision();
        assertThat(Units.of(from).convert(value, Units.of(to), digits))
                .isEqualByComparingTo(expected);
    }

    /** Printed examples: NIST SP 811, B.7.1. */
    @ParameterizedTest
    @CsvSource({"6.9749515, 6.974952", "6.9749505, 6.974950"})
    void a_lone_five_rounds_to_the_even_digit(BigDecimal value, BigDecimal rounded) {
        Unit volt = Units.of("V");
        assertThat(volt.convert(value, volt, 7)).isEqualByComparingTo(rounded);
    }

    @Test
    void twelve_pound_inches_are_one_pound_foot() {
        assertThat(Units.compare(new BigDecimal(12), Units.of("lbf·in"), ONE, Units.of("lbf·ft")))
                .isZero();
        assertThat(
                        Units.compare(
                                new BigDecimal("11.999"),
                                Units.of("lbf·in"),
                                ONE,
                                Units.of("lbf·ft")))
                .isNegative();
    }

    @Test
    void a_value_comes_back_from_every_unit_of_its_measure() {
        long seed = System.nanoTime();
        Random random = new Random(seed);
        for (Unit from : Units.all()) {
            for (Unit to : Units.all()) {
                if (from.comparesWith(to)) {
                    BigDecimal value = BigDecimal.valueOf(random.nextInt(1, 1_000_000), 3);
                    BigDecimal there = from.convert(value, to, 30);
                    BigDecimal back = to.convert(there, from, 30);
                    assertThat(back.round(new MathContext(20, RoundingMode.HALF_EVEN)))
                            .as("%s %s by %s, seed %s", value, from, to, seed)
                            .isEqualByComparingTo(value);
                }
            }
        }
    }

    @Test
    void a_rise_in_degrees_does_not_carry_the_offset() {
        Unit celsius = Units.of("°C").ofDifferences();
        Unit fahrenheit = Units.of("°F").ofDifferences();
        assertThat(celsius.convert(BigDecimal.TEN, fahrenheit, 5)).isEqualByComparingTo("18");
    }

    @Test
    void torque_is_never_compared_with_energy() {
        assertThatThrownBy(() -> Units.compare(ONE, Units.of("N·m"), ONE, Units.of("J")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("N·m measures torque, J measures energy");
        assertThat(Units.of("ft·lbf").measures()).isEqualTo(Measure.ENERGY);
        assertThat(Units.of("lbf·ft").measures()).isEqualTo(Measure.TORQUE);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "N·m|N·m",
                "N·m|Nm",
                "N·m|N.m",
                "N·m|N m",
                "N·m|NM",
                "N·m|n-m",
                "N·m|N⋅m",
                "lbf·ft|lbf·ft",
                "lbf·ft|lb-ft",
                "lbf·ft|ft-lb",
                "lbf·ft|Ft. Lbs.",
                "lbf·in|lbf·in",
                "lbf·in|in-lb",
                "lbf·in|in-lbs",
                "kgf·cm|kgf·cm",
                "kgf·cm|kgf cm",
                "kgf·m|kgf·m",
                "kPa|KPA",
                "bar|Bar",
                "psi|PSI",
                "V|v",
                "rpm|RPM",
                "°C|°c",
                "°C|ºC",
                "°C|℃",
                "°F|F",
                "mL|ml",
                "fl oz|fl. oz.",
                "g|G",
                "oz|OZ",
                "kg|KG",
                "lb|lbs",
            })
    void a_usual_spelling_is_known(String symbol, String spelling) {
        assertThat(Units.parse(spelling)).map(Unit::symbol).contains(symbol);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "-", "furlong", "mV", "MPa", "Nm²", "lbf", "ft"})
    void another_spelling_is_not(String spelling) {
        assertThat(Units.parse(spelling)).isEmpty();
    }

    @Test
    void every_symbol_is_a_spelling_of_its_own_unit() {
        assertThat(Units.all()).allSatisfy(u -> assertThat(Units.of(u.symbol())).isEqualTo(u));
    }
}
