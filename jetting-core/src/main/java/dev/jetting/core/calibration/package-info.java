/** What readings taken on an engine teach about how it differs from the model. */
package dev.jetting.core.calibration;
