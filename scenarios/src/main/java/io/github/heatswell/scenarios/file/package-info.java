/**
 * Scenario files: a house and a run of it, described by hand in YAML.
 *
 * <p>{@link io.github.heatswell.scenarios.file.ScenarioReader} turns a file into a
 * {@link io.github.heatswell.scenarios.file.Scenario} or reports everything that is wrong with it, each with line and
 * column. The rules of physics are not repeated here: every value goes through the builders of the description, and
 * what they refuse is traced back to its place in the file.
 *
 * <p>Values that a file may omit are taken from the {@code Typical} of their field, pass through the same builders, and are listed with
 * the scenario as an {@link io.github.heatswell.scenarios.file.Assumption}.
 */
package io.github.heatswell.scenarios.file;
