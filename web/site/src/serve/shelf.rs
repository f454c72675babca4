//! All of dist in memory, squeezed and tagged once. A name that is not on the shelf cannot be
//! reached, so no request can leave the folder.

use std::{collections::HashMap, fs};

use anyhow::{Context, Result};

use crate::{bundle, mime, project, squeeze};

/// One file, ready to send.
pub(crate) struct Item {
    pub(crate) media_type: &'static str,
    pub(crate) bytes: Vec<u8>,
    /// The squeezed bytes, when squeezing helps.
    pub(crate) brotli: Option<Vec<u8>>,
    pub(crate) tag: String,
    /// Whether a browser may keep it without ever asking again.
    pub(crate) versioned: bool,
}

/// What there is to serve.
#[derive(Default)]
pub(crate) struct Shelf {
    under: String,
    items: HashMap<String, Item>,
}

impl Shelf {
    /// Reads dist.
    pub(crate) fn stock(under: &str) -> Result<Self> {
        let dist = project::dist();
        let mut names = Vec::new();
        bundle::list(&dist, &dist, &mut names)?;
        let mut shelf = Self { under: under.to_owned(), items: HashMap::new() };
        for name in names {
            let bytes = fs::read(dist.join(&name))
                .with_context(|| format!("dist/{name} cannot be read."))?;
            shelf.put(name, bytes);
        }
        Ok(shelf)
    }

    fn put(&mut self, name: String, bytes: Vec<u8>) {
        let kind = mime::of(&name);
        let item = Item {
            media_type: kind.media_type,
            brotli: kind.compresses.then(|| squeeze::squeeze(&bytes)),
            tag: format!("{:016x}", squeeze::tag(&bytes)),
            versioned: bundle::is_versioned(&name),
            bytes,
        };
        self.items.insert(name, item);
    }

    /// The item at a request's path; a folder stands for its page.
    pub(crate) fn find(&self, path: &str) -> Option<&Item> {
        let name = path.strip_prefix(&self.under)?;
        if name.is_empty() || name.ends_with('/') {
            return self.items.get(&format!("{name}index.html"));
        }
        self.items.get(name)
    }

    /// Where a path that lacks the sub-path's closing slash should have gone.
    pub(crate) fn redirect(&self, path: &str) -> Option<&str> {
        (self.under.strip_suffix('/') == Some(path) && !path.is_empty()).then_some(&self.under)
    }

    #[cfg(test)]
    pub(crate) fn of(under: &str, files: &[(&str, &str)]) -> Self {
        let mut shelf = Self { under: under.to_owned(), items: HashMap::new() };
        for (name, text) in files {
            shelf.put((*name).to_owned(), text.as_bytes().to_vec());
        }
        shelf
    }
}
