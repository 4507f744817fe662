/** The rules API: sheets, assessed settings, rules, rulebooks, findings and reports. */
package dev.jetting.rules;
