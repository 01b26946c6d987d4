package io.github.heatswell.scenarios.teaching;

import io.github.heatswell.assessment.Measure;
import io.github.heatswell.assessment.Measure.Kind;
import io.github.heatswell.scenarios.teaching.Figures.Figure;
import io.github.heatswell.scenarios.wording.Nearest;
import io.github.heatswell.scenarios.wording.Printable;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoubleBinaryOperator;
import java.util.function.ToDoubleFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Something to work out from the runs of a lesson, such as {@code peak(closed) < 4.5 bar && !opened(closed)}: figures of houses,
 * numbers with or without a unit, arithmetic, comparisons, "and" and "not". Inside it is SI, pressures as a gauge shows them; what is true is 1, what is
 * false 0.
 *
 * @param kind what it measures, as far as that is known
 * @param value how to work it out
 */
record Expression(Optional<Kind> kind, ToDoubleFunction<LessonRun> value) {

    /**
     * What a lesson has given names to.
     *
     * @param houses its houses
     * @param figures its own figures
     */
    record Names(Set<String> houses, Map<String, Expression> figures) {}

    /**
     * Reads an expression.
     *
     * @throws IllegalArgumentException if it is none, or names what nobody knows
     */
    static Expression of(String text, Names names) {
        return Parser.parse(text, names);
    }

    double in(LessonRun run) {
        return value.applyAsDouble(run);
    }

    boolean holds(LessonRun run) {
        return in(run) != 0;
    }

    Measure measure(LessonRun run) {
        return new Measure(kind.orElseThrow(), in(run));
    }

    Expression as(Kind known) {
        return new Expression(Optional.of(known), value);
    }

    /** Takes a text apart. */
    private static final class Parser {

        private static final Pattern TOKEN =
                Pattern.compile("\\s*(?:(\\d+(?:\\.\\d+)?)|([A-Za-z]\\w*)|(&&|<=|>=|==|[-+*/()<>!,]))");

        private final String text;
        private final Names names;
        private final List<String> tokens = new ArrayList<>();
        private int next;

        private Parser(String text, Names names) {
            this.text = text;
            this.names = names;
            Matcher token = TOKEN.matcher(text.strip());
            while (token.lookingAt()) {
                tokens.add(token.group().strip());
                token.region(token.end(), text.strip().length());
            }
            if (token.regionStart() < text.strip().length()) {
                throw wrong(text.strip().substring(token.regionStart()));
            }
        }

        static Expression parse(String text, Names names) {
            Parser parser = new Parser(text, names);
            Expression all = parser.and();
            if (parser.next < parser.tokens.size()) {
                throw parser.wrong(parser.tokens.get(parser.next));
            }
            return all;
        }

        private Expression and() {
            Expression all = comparison();
            while (take("&&")) {
                Expression left = all;
                Expression right = comparison();
                all = new Expression(Optional.empty(), run -> left.holds(run) && right.holds(run) ? 1 : 0);
            }
            return all;
        }

        private Expression comparison() {
            Expression left = sum();
            for (String sign : List.of("<", ">", "<=", ">=", "==")) {
                if (take(sign)) {
                    return joined(left, sum(), Optional.empty(), operator(sign));
                }
            }
            return left;
        }

        private Expression sum() {
            Expression all = product();
            for (String sign = taken("+", "-"); !sign.isEmpty(); sign = taken("+", "-")) {
                Expression right = product();
                Optional<Kind> kind = all.kind().filter(one -> right.kind().equals(Optional.of(one)));
                all = joined(all, right, sign.equals("-") ? kind.map(Parser::difference) : kind, operator(sign));
            }
            return all;
        }

        private Expression product() {
            Expression all = factor();
            for (String sign = taken("*", "/"); !sign.isEmpty(); sign = taken("*", "/")) {
                all = joined(all, factor(), Optional.empty(), operator(sign));
            }
            return all;
        }

        private static Kind difference(Kind kind) {
            return switch (kind) {
                case GAUGE_PRESSURE -> Kind.PRESSURE_DIFFERENCE;
                case TEMPERATURE -> Kind.TEMPERATURE_DIFFERENCE;
                default -> kind;
            };
        }

        private static Expression joined(
                Expression left, Expression right, Optional<Kind> kind, DoubleBinaryOperator how) {
            return new Expression(kind, run -> how.applyAsDouble(left.in(run), right.in(run)));
        }

        private static DoubleBinaryOperator operator(String sign) {
            return switch (sign) {
                case "+" -> (a, b) -> a + b;
                case "-" -> (a, b) -> a - b;
                case "*" -> (a, b) -> a * b;
                case "/" -> (a, b) -> a / b;
                case "<" -> (a, b) -> a < b ? 1 : 0;
                case ">" -> (a, b) -> a > b ? 1 : 0;
                case "<=" -> (a, b) -> a <= b ? 1 : 0;
                case ">=" -> (a, b) -> a >= b ? 1 : 0;
                default -> (a, b) -> a == b ? 1 : 0;
            };
        }

        private Expression factor() {
            if (take("!")) {
                Expression not = factor();
                return new Expression(Optional.empty(), run -> not.holds(run) ? 0 : 1);
            }
            if (take("-")) {
                Expression minus = factor();
                return new Expression(minus.kind(), run -> -minus.in(run));
            }
            if (take("(")) {
                Expression inside = and();
                expect(")");
                return inside;
            }
            String token = token();
            return Character.isDigit(token.charAt(0)) ? number(Double.parseDouble(token)) : named(token);
        }

        private Expression number(double value) {
            Optional<KnownUnit> unit = next < tokens.size() ? KnownUnit.of(tokens.get(next)) : Optional.empty();
            if (unit.isEmpty()) {
                return new Expression(Optional.empty(), run -> value);
            }
            next++;
            double si = unit.get().toSi(value);
            return new Expression(Optional.of(unit.get().kind()), run -> si);
        }

        private Expression named(String name) {
            if (!take("(")) {
                return Optional.ofNullable(names.figures().get(name))
                        .orElseThrow(() -> unknown(
                                name, "figure of this lesson", names.figures().keySet()));
            }
            Figure figure = Figures.named(name).orElseThrow(() -> unknown(name, "figure", Figures.names()));
            String house = figure.ofHouse() ? house() : "";
            List<Expression> numbers = new ArrayList<>();
            while (numbers.size() < figure.numbers()) {
                if (figure.ofHouse() || !numbers.isEmpty()) {
                    expect(",");
                }
                numbers.add(sum());
            }
            expect(")");
            return new Expression(
                    figure.kind(),
                    run -> figure.value()
                            .of(
                                    figure.ofHouse() ? run.house(house) : null,
                                    numbers.stream()
                                            .mapToDouble(one -> one.in(run))
                                            .toArray()));
        }

        private String house() {
            String name = token();
            if (!names.houses().contains(name)) {
                throw unknown(name, "house of this lesson", names.houses());
            }
            return name;
        }

        private boolean take(String sign) {
            return !taken(sign).isEmpty();
        }

        private String taken(String... signs) {
            boolean there = next < tokens.size() && List.of(signs).contains(tokens.get(next));
            return there ? tokens.get(next++) : "";
        }

        private void expect(String sign) {
            if (!take(sign)) {
                throw new IllegalArgumentException("'" + sign + "' is missing in '" + text + "'"
                        + (next < tokens.size() ? " before '" + tokens.get(next) + "'" : " at the end"));
            }
        }

        private String token() {
            if (next == tokens.size()) {
                throw new IllegalArgumentException("'" + text + "' ends too early");
            }
            String token = tokens.get(next++);
            if (!Character.isLetterOrDigit(token.charAt(0))) {
                throw wrong(token);
            }
            return token;
        }

        private IllegalArgumentException wrong(String rest) {
            return new IllegalArgumentException(
                    "'" + text + "' cannot be understood from " + Printable.quote(rest.strip()) + " on");
        }

        private static IllegalArgumentException unknown(String name, String what, Collection<String> known) {
            return new IllegalArgumentException(
                    Printable.quote(name) + " is no " + what + " known here" + Nearest.hint(name, known));
        }
    }
}
