//! A program that solves cases one at a time, as it is asked.

use std::{
    io::{BufRead, BufReader, Lines, Write},
    process::{Child, ChildStdin, ChildStdout, Command, Stdio},
};

use anyhow::{Context, Result};

/// What one solve gave.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Answer {
    pub(crate) milliseconds: f64,
    /// Nothing for a direct method.
    pub(crate) iterations: Option<u32>,
    pub(crate) residual: f64,
    /// The figure by which all are seen to have solved the same.
    pub(crate) result: f64,
}

/// A running program that reads a question per line and answers with milliseconds, iterations or a
/// dash, residual and result, tab-separated.
pub(crate) struct Competitor {
    name: String,
    child: Child,
    questions: Option<ChildStdin>,
    answers: Lines<BufReader<ChildStdout>>,
}

impl Competitor {
    /// Starts the program, on one thread.
    pub(crate) fn start(name: &str, command: &mut Command) -> Result<Self> {
        for variable in ["OMP_NUM_THREADS", "OPENBLAS_NUM_THREADS", "MKL_NUM_THREADS"] {
            command.env(variable, "1");
        }
        let mut child = command
            .stdin(Stdio::piped())
            .stdout(Stdio::piped())
            .spawn()
            .with_context(|| format!("{name} did not start."))?;
        let questions = child.stdin.take();
        let answers = child.stdout.take().context("No output to read.")?;
        let answers = BufReader::new(answers).lines();
        Ok(Self { name: name.to_owned(), child, questions, answers })
    }

    /// Asks it for one solve.
    pub(crate) fn ask(&mut self, question: &str) -> Result<Answer> {
        let fault = || format!("{} did not answer `{question}`.", self.name);
        let questions = self.questions.as_mut().with_context(fault)?;
        writeln!(questions, "{question}").and_then(|()| questions.flush()).with_context(fault)?;
        let line = self.answers.next().with_context(fault)?.with_context(fault)?;
        read(&line).with_context(|| format!("{} answered `{line}`.", self.name))
    }
}

impl Drop for Competitor {
    fn drop(&mut self) {
        // At the end of its questions a program ends by itself.
        self.questions = None;
        drop(self.child.wait());
    }
}

fn read(line: &str) -> Result<Answer> {
    let cells: Vec<&str> = line.split('\t').collect();
    let &[milliseconds, iterations, residual, result] = cells.as_slice() else {
        anyhow::bail!("Four figures were expected.");
    };
    Ok(Answer {
        milliseconds: milliseconds.parse()?,
        iterations: (iterations != "-").then(|| iterations.parse()).transpose()?,
        residual: residual.parse()?,
        result: result.parse()?,
    })
}

#[cfg(test)]
mod tests {
    use super::read;

    #[test]
    fn an_answer_is_four_figures() {
        let answer = read("3.5\t18\t5.6e-09\t0.1418").unwrap();
        assert_eq!((answer.milliseconds, answer.iterations), (3.5, Some(18)));
        assert_eq!(read("3.5\t-\t1e-12\t0.1418").unwrap().iterations, None);
        assert!(read("").is_err() && read("1\t2\t3").is_err());
    }
}
