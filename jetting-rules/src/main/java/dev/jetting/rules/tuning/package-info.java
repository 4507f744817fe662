/** Leading a rider through plug chops: what was read, what to test and what to change next. */
package dev.jetting.rules.tuning;
