/**
 * What is fed with altered bytes. {@link leadlight.fuzz.FuzzCorpusTest} runs each target over its
 * corpus in every build; {@code mvn -Pfuzz} runs one for long under Jazzer ({@code docs/trust.md}).
 */
package leadlight.fuzz;
