/** From the mixture to the probability that it is too lean: limits, uncertainty, riding. */
package dev.jetting.rules.risk;
