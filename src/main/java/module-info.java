/**
 * Proves cable harnesses and junction boxes point by point.
 *
 * <p>{@code dev.ringout} is the door; the other packages that are exported are what goes in and
 * comes out: requests, results, and the facts that results are made of. The command line and the
 * writers are not: their forms are pages and documents, not types.
 */
// Some of the libraries are not modules yet; the steps of the store are texts, not types.
@SuppressWarnings({"requires-automatic", "opens"})
module dev.ringout {
  requires ejml.core;
  requires ejml.ddense;
  requires ejml.dsparse;
  requires com.fasterxml.aalto;
  requires com.fasterxml.jackson.jr.ob;
  requires com.fazecast.jSerialComm;
  requires commons.math3;
  requires com.google.zxing;
  requires de.siegmar.fastcsv;
  requires static info.picocli;
  requires flyway.core;
  requires java.desktop;
  requires java.logging;
  requires java.sql;
  requires java.xml;
  requires jdk.httpserver;
  requires org.apache.poi.ooxml;
  requires org.apache.poi.poi;
  requires org.jgrapht.core;
  requires org.jspecify;
  requires org.postgresql.jdbc;
  requires org.xerial.sqlitejdbc;
  requires openhtmltopdf.pdfbox;
  requires openhtmltopdf.core;
  requires openhtmltopdf.svg.support;
  requires org.apache.fontbox;
  requires org.apache.pdfbox;
  requires org.apache.pdfbox.io;
  requires org.apache.xmlbeans;
  requires org.bouncycastle.provider;

  opens dev.ringout.cli to
      info.picocli;
  opens dev.ringout.store.migration;

  exports dev.ringout;
  exports dev.ringout.bench;
  exports dev.ringout.check;
  exports dev.ringout.circuit;
  exports dev.ringout.compare;
  exports dev.ringout.diagnose;
  exports dev.ringout.harness;
  exports dev.ringout.imports.list;
  exports dev.ringout.jobs;
  exports dev.ringout.json;
  exports dev.ringout.lot;
  exports dev.ringout.meter;
  exports dev.ringout.meter.drive;
  exports dev.ringout.meter.link;
  exports dev.ringout.meter.practice;
  exports dev.ringout.people;
  exports dev.ringout.plan;
  exports dev.ringout.print;
  exports dev.ringout.readings;
  exports dev.ringout.record;
  exports dev.ringout.review;
  exports dev.ringout.revision;
  exports dev.ringout.seal;
  exports dev.ringout.serve;
  exports dev.ringout.sheet;
  exports dev.ringout.source;
  exports dev.ringout.standards;
  exports dev.ringout.store;
  exports dev.ringout.text;
  exports dev.ringout.trace;
  exports dev.ringout.units;
  exports dev.ringout.words;
  exports dev.ringout.work;
}
