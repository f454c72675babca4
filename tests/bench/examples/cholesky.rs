//! A sparse Cholesky factorisation of the benchmark's matrices, on one thread.
//!
//! `cholesky FOLDER` reads the name of a case per line and answers, tab-separated: milliseconds from
//! matrix to answer, a dash for the iterations it has none of, relative residual, coupling. The
//! matrices are those that the example conduction_bench of inchwise-core writes.

use std::io::{BufRead, Write};
use std::path::Path;
use std::time::Instant;

use anyhow::{Context, Result};
use faer::linalg::solvers::Solve;
use faer::sparse::{SparseColMat, SymbolicSparseColMat};
use faer::{Col, Par, Side};

/// A matrix with the heat put in and what turns the answer into the coupling.
struct Case {
    matrix: SparseColMat<usize, f64>,
    heat: Col<f64>,
    measure: Vec<f64>,
}

/// Takes numbers off the front of a file.
struct Bytes<'a>(&'a [u8]);

impl Bytes<'_> {
    fn take<const WIDTH: usize, T>(
        &mut self,
        count: usize,
        number: fn([u8; WIDTH]) -> T,
    ) -> Result<Vec<T>> {
        let (head, rest) = self.0.split_at_checked(count * WIDTH).context("the file is cut off")?;
        self.0 = rest;
        Ok(head.as_chunks::<WIDTH>().0.iter().map(|bytes| number(*bytes)).collect())
    }

    fn count(&mut self) -> Result<usize> {
        Ok(self.take(1, u64::from_le_bytes)?[0] as usize)
    }
}

fn read(path: &Path) -> Result<Case> {
    let file = std::fs::read(path).with_context(|| format!("{} is missing", path.display()))?;
    let mut bytes = Bytes(&file);
    let (rows, entries) = (bytes.count()?, bytes.count()?);
    let starts = bytes.take(rows + 1, |start| u64::from_le_bytes(start) as usize)?;
    let columns = bytes.take(entries, |column| u32::from_le_bytes(column) as usize)?;
    let values = bytes.take(entries, f64::from_le_bytes)?;
    let heat = bytes.take(rows, f64::from_le_bytes)?;
    let measure = bytes.take(rows, f64::from_le_bytes)?;
    // Symmetric: its rows are its columns.
    let pattern = SymbolicSparseColMat::new_checked(rows, rows, starts, None, columns);
    let matrix = SparseColMat::new(pattern, values);
    Ok(Case { matrix, heat: Col::from_fn(rows, |n| heat[n]), measure })
}

fn solve(case: &Case) -> Result<String> {
    let start = Instant::now();
    let factors = case.matrix.sp_cholesky(Side::Lower).map_err(|e| anyhow::anyhow!("{e:?}"))?;
    let answer = factors.solve(&case.heat);
    let elapsed = 1000.0 * start.elapsed().as_secs_f64();
    let left_over = &case.heat - &case.matrix * &answer;
    let residual = left_over.norm_l2() / case.heat.norm_l2();
    let coupling: f64 = case.measure.iter().zip(answer.iter()).map(|(m, x)| m * x).sum();
    Ok(format!("{elapsed}\t-\t{residual:e}\t{coupling}"))
}

fn main() -> Result<()> {
    faer::set_global_parallelism(Par::Seq);
    let folder = std::env::args().nth(1).context("usage: cholesky FOLDER")?;
    let mut known: Option<(String, Case)> = None;
    for line in std::io::stdin().lock().lines() {
        let name = line?;
        let case = match known.take() {
            Some((known_name, case)) if known_name == name => case,
            _ => read(&Path::new(&folder).join(format!("{name}.csr")))?,
        };
        println!("{}", solve(&case)?);
        std::io::stdout().flush()?;
        known = Some((name, case));
    }
    Ok(())
}
