//! The matrix of a problem in a file, for other solvers to solve the same.

use std::io::{BufWriter, Result, Write};
use std::path::Path;

use inchwise_core::conduction::{AssembledSystem, Environment};

/// Writes the matrix in compressed rows, with the heat input of environment 0 at 1 K and what turns
/// the answer x into the coupling of the two environments: coupling = measure·x.
///
/// Little-endian, in this order: rows n (u64), entries m (u64), the beginning of each row and the end
/// of the last (n + 1 × u64), columns (m × u32), entries (m × f64), heat (n × f64), measure
/// (n × f64). Only cells that conduct have a row.
pub fn write(system: &AssembledSystem, path: &Path) -> Result<()> {
    let mut rows = vec![Vec::new(); system.cells];
    let mut diagonal = vec![0.0; system.cells];
    let mut heat = vec![0.0; system.cells];
    let mut measure = vec![0.0; system.cells];
    for &(a, b, conductance) in &system.interior_faces {
        rows[a].push((b, -conductance.value()));
        rows[b].push((a, -conductance.value()));
        diagonal[a] += conductance.value();
        diagonal[b] += conductance.value();
    }
    for &(cell, environment, conductance) in &system.boundary_faces {
        diagonal[cell] += conductance.value();
        let side = if environment == Environment(0) { &mut heat } else { &mut measure };
        side[cell] += conductance.value();
    }
    let conducting: Vec<usize> = (0..system.cells).filter(|&c| diagonal[c] > 0.0).collect();
    let mut numbers = vec![0_u32; system.cells];
    for (number, &cell) in conducting.iter().enumerate() {
        numbers[cell] = number as u32;
        rows[cell].push((cell, diagonal[cell]));
        rows[cell].sort_by_key(|&(column, _)| column);
    }
    let entries: usize = conducting.iter().map(|&cell| rows[cell].len()).sum();
    let mut out = BufWriter::new(std::fs::File::create(path)?);
    out.write_all(&(conducting.len() as u64).to_le_bytes())?;
    out.write_all(&(entries as u64).to_le_bytes())?;
    let mut end = 0_u64;
    out.write_all(&end.to_le_bytes())?;
    for &cell in &conducting {
        end += rows[cell].len() as u64;
        out.write_all(&end.to_le_bytes())?;
    }
    for (column, _) in conducting.iter().flat_map(|&cell| &rows[cell]) {
        out.write_all(&numbers[*column].to_le_bytes())?;
    }
    for (_, entry) in conducting.iter().flat_map(|&cell| &rows[cell]) {
        out.write_all(&entry.to_le_bytes())?;
    }
    for vector in [&heat, &measure] {
        for &cell in &conducting {
            out.write_all(&vector[cell].to_le_bytes())?;
        }
    }
    out.flush()
}
