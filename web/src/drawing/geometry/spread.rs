//! Labels along a line, moved apart so that none covers another.

/// The places of labels that want to lie at `wanted`, in rising order, kept at least `least`
/// apart and between `low` and `high`; where they cannot all fit they share the room evenly.
///
/// Labels that would collide are pooled, and each pool sits about the mean of what its labels
/// want: no label moves further than it must.
pub fn spread(wanted: &[f64], least: f64, low: f64, high: f64) -> Vec<f64> {
    let count = wanted.len();
    if count == 0 {
        return Vec::new();
    }
    let room = high - low;
    let gap = if count > 1 { least.min(room / (count - 1) as f64) } else { least };
    // With k gaps taken off, labels at least a gap apart become labels in rising order.
    let mut pools: Vec<(f64, usize)> = Vec::new();
    for (index, &want) in wanted.iter().enumerate() {
        let mut pool = (want - gap * index as f64, 1);
        while let Some(&(mean, size)) = pools.last() {
            if mean <= pool.0 {
                break;
            }
            pools.pop();
            let total = mean * size as f64 + pool.0 * pool.1 as f64;
            pool = (total / (size + pool.1) as f64, size + pool.1);
        }
        pools.push(pool);
    }
    let highest = (high - gap * (count - 1) as f64).max(low);
    pools
        .iter()
        .flat_map(|&(mean, size)| std::iter::repeat_n(mean.clamp(low, highest), size))
        .enumerate()
        .map(|(index, base)| base + gap * index as f64)
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn labels_with_room_stay_where_they_want() {
        assert_eq!(spread(&[10.0, 40.0, 90.0], 20.0, 0.0, 100.0), vec![10.0, 40.0, 90.0]);
    }

    #[test]
    fn close_labels_part_about_their_middle() {
        assert_eq!(spread(&[50.0, 52.0], 20.0, 0.0, 100.0), vec![41.0, 61.0]);
    }

    #[test]
    fn labels_stay_between_the_ends() {
        assert_eq!(spread(&[-5.0, 0.0, 2.0], 20.0, 0.0, 100.0), vec![0.0, 20.0, 40.0]);
        assert_eq!(spread(&[99.0, 100.0], 20.0, 0.0, 100.0), vec![80.0, 100.0]);
    }

    #[test]
    fn too_many_labels_share_what_there_is() {
        assert_eq!(spread(&[50.0, 50.0, 50.0], 80.0, 0.0, 100.0), vec![0.0, 50.0, 100.0]);
        assert_eq!(spread(&[], 80.0, 0.0, 100.0), Vec::<f64>::new());
    }
}
