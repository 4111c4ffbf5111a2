package lanewarden.audit.findings;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lanewarden.audit.findings.Finding.Kind;
import lanewarden.audit.wording.ReadingMark;
import lanewarden.audit.wording.Wording;
import lanewarden.journal.Check;
import lanewarden.journal.Correction;
import lanewarden.journal.Fact;
import lanewarden.journal.PastChecks;
import lanewarden.journal.ProtestFact;
import lanewarden.journal.SetUpStated;
import lanewarden.journal.Standing;
import lanewarden.journal.TakenShot;
import lanewarden.rules.Division;
import lanewarden.rules.Shot;
import lanewarden.rules.Verdict;

/**
 * Looks at every step of every check, as it is folded, with the rule beside it.
 *
 * <p>Owned by one thread.
 */
final class CheckExaminer {
  private final Standing standing;
  private final List<Finding> findings;
  private final VerdictExaminer verdicts;
  private final AdmissionExaminer admissions;
  private final PreparationExaminer preparation;
  private final DoubtExaminer doubts;
  private final ProtestExaminer protests;
  private final BibsCorrected bibs;
  private final Set<Long> open = new HashSet<>();
  private final Set<Long> voided = new HashSet<>();

  /** Checks that left the line, and of which a correction asks the rule anew. */
  private final Set<Long> reopened = new HashSet<>();

  CheckExaminer(Standing standing, List<Finding> findings) {
    this.standing = standing;
    this.findings = findings;
    this.verdicts = new VerdictExaminer(standing, findings);
    this.admissions = new AdmissionExaminer(standing, findings);
    this.preparation = new PreparationExaminer(findings);
    this.doubts = new DoubtExaminer(findings);
    this.protests = new ProtestExaminer(standing, findings);
    this.bibs = new BibsCorrected(findings);
  }

  /** Looks at a fact that was just folded into the standing. */
  void examine(long entry, Fact fact) {
    if (fact instanceof Fact.CheckOpened opened) {
      preparation.opened(entry, opened);
      opened(entry, opened);
      open.add(entry);
    } else if (fact instanceof SetUpStated stated) {
      refuseIfClosed(entry, stated.check(), "Bow and arrow were stated");
      preparation.stated(entry, check(stated.check()));
      doubts.turned(entry, fact, check(stated.check()));
      verdicts.fell(entry, check(stated.check()), "bow and arrow were stated anew");
    } else if (fact instanceof Fact.ConditionTicked ticked) {
      refuseIfClosed(entry, ticked.check(), "A condition was ticked");
      preparation.ticked(
          entry, ticked.condition(), check(ticked.check()), division(check(ticked.check())));
    } else if (fact instanceof Fact.ReadingTaken taken) {
      refuseIfClosed(entry, taken.check(), "A reading was taken");
      taken(entry, taken);
      doubts.turned(entry, fact, check(taken.check()));
    } else if (fact instanceof Fact.ReadingVoided declared) {
      refuseIfClosed(entry, declared.check(), "A reading was declared void");
      declaredVoid(entry, declared);
      doubts.turned(entry, fact, check(declared.check()));
    } else if (fact instanceof Fact.ReadingFlagged flag) {
      Check flagged = check(flag.check());
      refuseUnlessAskedAnew(entry, flag.check(), "A reading was flagged");
      doubts.flagged(entry, flag, flagged, division(flagged));
    } else if (fact instanceof Fact.ReadingKept kept) {
      refuseIfClosed(entry, kept.check(), "A reading was let count");
      doubts.kept(entry, kept, check(kept.check()));
      doubts.turned(entry, fact, check(kept.check()));
    } else if (fact instanceof Fact.VerdictGiven given) {
      refuseUnlessAskedAnew(entry, given.check(), "A verdict was given");
      reopened.remove(given.check());
      verdicts.given(entry, given, check(given.check()));
      doubts.decided(entry, check(given.check()), division(check(given.check())));
    } else if (fact instanceof Fact.CheckClosed closed) {
      refuseIfClosed(entry, closed.check(), "The check was closed once more");
      closed(entry, closed);
      open.remove(closed.check());
    } else if (fact instanceof ProtestFact.CorrectionConfirmed confirmed) {
      corrected(entry, confirmed);
    }
  }

  /** A correction of division or reading takes the verdict back, and one is given anew. */
  private void corrected(long entry, ProtestFact.CorrectionConfirmed confirmed) {
    Optional<Correction> effective =
        standing
            .docket()
            .correction(confirmed.correction())
            .filter(one -> one.confirmation().filter(by -> by.sequence() == entry).isPresent());
    if (effective.isEmpty()) {
      return;
    }
    Check check = check(effective.get().fact().check());
    bibs.corrected(entry, check);
    if (effective.get().askedAnew()) {
      verdicts.fell(entry, check, "a correction took effect");
      reopened.add(check.number());
    }
  }

  private void opened(long entry, Fact.CheckOpened opened) {
    onlyOne(entry);
    Check now = check(entry);
    bibs.opened(now);
    Long protest = opened.protest();
    if (protest == null) {
      called(now);
    } else {
      protests.opened(now, protest);
    }
  }

  private void onlyOne(long entry) {
    for (long other : open) {
      add(
          Kind.ORDER,
          "Check " + entry + " was opened while check " + other + " was still at the line.",
          entry,
          other);
    }
  }

  private void called(Check now) {
    Fact.CheckOpened opened = now.opened();
    PastChecks past = standing.pastBefore(now);
    int attempt = past.all().size() + 1;
    if (attempt > 1) {
      sameAsBefore(now, past.all().get(attempt - 2));
    }
    if (opened.attempt() != attempt) {
      add(
          Kind.ORDER,
          Wording.check(now)
              + " is numbered attempt "
              + opened.attempt()
              + ", but it is number "
              + attempt
              + " of this bib.",
          now.number());
    }
    Optional<Division> division = division(now);
    if (division.isEmpty()) {
      add(
          Kind.RULE,
          Wording.check(now)
              + ": the rule book in force has no division "
              + opened.division()
              + ", so no rule governs it.",
          now.number());
    } else {
      admissions.opened(now, past, division.get());
    }
  }

  /** A bib that comes back under another name or division is not wrong, but must be seen. */
  private void sameAsBefore(Check now, Check before) {
    Fact.CheckOpened is = now.opened();
    Fact.CheckOpened was = before.opened();
    if (!is.division().equals(was.division()) || !is.name().equals(was.name())) {
      add(
          Kind.EXCHANGED,
          Wording.check(now)
              + " is of "
              + is.name()
              + " in division "
              + is.division()
              + "; check "
              + before.number()
              + " of the same bib was of "
              + was.name()
              + " in division "
              + was.division()
              + before.outcome().map(o -> " and ended " + o.word()).orElse("")
              + ".",
          now.number(),
          before.number());
    }
  }

  private void taken(long entry, Fact.ReadingTaken taken) {
    Check check = check(taken.check());
    List<Shot> judged = check.judged();
    if (taken.shot() != judged.size()) {
      add(
          Kind.ORDER,
          Wording.check(check)
              + ": the reading of entry "
              + entry
              + " is numbered shot "
              + taken.shot()
              + ", but it is shot "
              + judged.size()
              + ".",
          entry);
    }
    List<Shot> before = judged.subList(0, judged.size() - 1);
    asked(entry, check, judged.size(), before);
    if (taken.source().equals(ReadingMark.TYPED)) {
      add(
          Kind.TYPED,
          Wording.check(check) + ", shot " + judged.size() + ": " + taken.speed() + ".",
          entry);
    }
  }

  /** A shot is taken only while the rule asks for one. */
  private void asked(long entry, Check check, int shot, List<Shot> before) {
    String taken = Wording.check(check) + ": shot " + shot + " was taken ";
    Optional<Verdict> verdict =
        division(check).map(d -> d.rule().judge(check.setUp(), check.ticked(), before));
    if (check.outcome().isPresent() || verdict.filter(Verdict::ends).isPresent()) {
      add(Kind.ORDER, taken + "after the rule decided.", entry);
    } else if (verdict.filter(v -> !v.takesShots()).isPresent()) {
      add(
          Kind.ORDER,
          taken + "while the rule asked for something else: " + verdict.get().reason() + ".",
          entry);
    }
  }

  private void declaredVoid(long entry, Fact.ReadingVoided declared) {
    Check check = check(declared.check());
    if (!voided.add(declared.reading())) {
      add(
          Kind.ORDER,
          Wording.check(check) + ": a reading that was void already was declared void again.",
          declared.reading(),
          entry);
    }
    for (int shot = 0; shot < check.shots().size(); shot++) {
      TakenShot taken = check.shots().get(shot);
      if (taken.sequence() == declared.reading()) {
        add(
            Kind.VOID,
            Wording.check(check)
                + ", shot "
                + (shot + 1)
                + ", "
                + taken.reading().speed()
                + ": "
                + Wording.quoted(declared.reason())
                + ".",
            declared.reading(),
            entry);
      }
    }
    verdicts.fell(entry, check, "a reading was declared void");
  }

  private void closed(long entry, Fact.CheckClosed closed) {
    Check check = check(closed.check());
    if (check.outcome().isPresent()) {
      return;
    }
    if (closed.reason() == null) {
      add(
          Kind.ORDER,
          Wording.check(check) + " was closed without a verdict and without a reason.",
          entry);
    } else {
      add(
          Kind.NO_VERDICT,
          Wording.check(check)
              + " after "
              + Wording.count(check.shots().size(), "shot")
              + ": "
              + Wording.quoted(closed.reason())
              + "."
              + overAllTheSame(check)
              + DoubtExaminer.leftOpen(check, division(check)),
          check.number(),
          entry);
    }
  }

  /** Who was over but for a tick or a band is not let off by ending the check; say so. */
  private String overAllTheSame(Check check) {
    if (!check.usesRecheck()) {
      return "";
    }
    return division(check)
            .map(Division::rule)
            .filter(check::isOverIfAllCount)
            .map(rule -> check.judgedBy(rule).reason())
            .map(lacks -> " By its readings it was over, and only lacked: " + lacks + ".")
            .orElse(
                " It had been over before a reading was declared void or figures were stated anew.")
        + " It uses up a re-check.";
  }

  private void refuseUnlessAskedAnew(long entry, long number, String what) {
    if (!reopened.contains(number)) {
      refuseIfClosed(entry, number, what);
    }
  }

  private void refuseIfClosed(long entry, long number, String what) {
    if (!open.contains(number)) {
      add(
          Kind.ORDER,
          what + " after " + Wording.check(check(number)) + " had left the line.",
          entry);
    }
  }

  /** Looks at what is left open when the last entry is folded. */
  void finish() {
    doubts.finish();
    for (Check check : standing.checks()) {
      if (check.outcome().isPresent()) {
        continue;
      }
      Optional<Division> division = division(check);
      if (division.isPresent() && check.judgedBy(division.get().rule()).ends()) {
        add(
            Kind.VERDICT_MISSING,
            Wording.check(check)
                + ": the rule gives "
                + Wording.verdict(check.judgedBy(division.get().rule()))
                + ", but no verdict stands.",
            check.number());
      } else if (!check.isClosed()) {
        add(
            Kind.NO_VERDICT,
            Wording.check(check) + " was still running at the ledger's last entry.",
            check.number());
      }
    }
  }

  private Optional<Division> division(Check check) {
    return standing
        .ruleBook(check.ruleBook())
        .flatMap(book -> book.division(check.opened().division()));
  }

  private Check check(long number) {
    return standing
        .find(number)
        .orElseThrow(() -> new IllegalStateException("check " + number + " was not folded"));
  }

  private void add(Kind kind, String words, Long... entries) {
    findings.add(Finding.of(kind, words, entries));
  }
}
