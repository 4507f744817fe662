/**
 * The laws that any rule or rulebook can be held against by its author's tests, whatever the test
 * framework: choose laws in a {@link dev.jetting.rules.laws.LawKit}, declare what a rule promises
 * in a {@link dev.jetting.rules.laws.Candidate}, and bring trials from wherever they come.
 */
package dev.jetting.rules.laws;
